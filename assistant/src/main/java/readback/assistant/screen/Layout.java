package readback.assistant.screen;

import java.util.List;
import java.util.StringJoiner;
import org.jline.utils.AttributedStyle;
import readback.assistant.session.Wrapped;

/**
 * Lays a {@link View} out for a size from 60 by 14 to 200 by 60. From the top: cautions, the question, what was heard,
 * the figures, what can be touched, the readings; keys, microphone and voice at the bottom. On wide screens figures and
 * readings stand to the right. What does not fit is left out, the least important first. Pure.
 */
public final class Layout {

    /** From here on figures and readings stand beside the question. */
    private static final int WIDE = 110;

    private static final int ROOMY_ROWS = 24;

    /** The question keeps so many rows when cautions fill the screen. */
    private static final int QUESTION_ROWS = 2;

    private static final String CAUTION_MARK = "! ";
    private static final String MORE = " ...";

    private final Palette palette;
    private final ScreenTexts texts;
    private final boolean unicode;

    /** @param unicode whether the terminal shows block characters */
    public Layout(Palette palette, ScreenTexts texts, boolean unicode) {
        this.palette = palette;
        this.texts = texts;
        this.unicode = unicode;
    }

    /** The view with what is being typed, as lines and touch targets. */
    Frame frame(View view, Typing typing, int columns, int rows) {
        return new Sheet(view, typing, columns, rows).frame();
    }

    /** One layout while it is being made. */
    private final class Sheet {
        private final View view;
        private final Typing typing;
        private final int columns;
        private final int rows;
        private final Canvas canvas;
        private final LargeFigures large;
        private final Buttons buttons;

        private Sheet(View view, Typing typing, int columns, int rows) {
            this.view = view;
            this.typing = typing;
            this.columns = columns;
            this.rows = rows;
            this.canvas = new Canvas(columns, rows, palette.plain());
            this.large = new LargeFigures(canvas, columns, palette.strong(), unicode);
            this.buttons = new Buttons(canvas, palette.target(), rows);
        }

        private Frame frame() {
            boolean wide = columns >= WIDE && rows >= ROOMY_ROWS;
            Area whole = new Area(0, 0, columns, rows);
            List<String> cautions = cautions();
            List<String> keys = Wrapped.lines(typing.keys(view.held()), columns - 3);
            boolean crowded = cautions.size() + QUESTION_ROWS + Buttons.LEAST_ROWS + 3 > rows;
            int bottom = 1 + (crowded ? 1 : Math.min(2, keys.size()));
            int top = Math.min(cautions.size(), Math.max(1, rows - bottom - QUESTION_ROWS - Buttons.LEAST_ROWS));
            Area middle = new Area(0, top, columns, rows - bottom);
            caution(cautions, whole.first(top));
            if (wide) {
                int split = columns * 55 / 100;
                Block.stack(
                        List.of(question(split), hint(split), answers(split), heard(), options(split, middle.height())),
                        new Area(0, middle.top(), split, middle.bottom()));
                Block.stack(
                        List.of(
                                atUnit(columns - split),
                                figures(columns - split),
                                verdict(columns - split),
                                probes(),
                                readings(columns - split)),
                        new Area(split, middle.top(), columns, middle.bottom()));
            } else {
                Block.stack(
                        List.of(
                                question(columns),
                                hint(columns),
                                answers(columns),
                                heard(),
                                atUnit(columns),
                                figures(columns),
                                verdict(columns),
                                probes(),
                                readings(columns),
                                options(columns, middle.height())),
                        middle);
            }
            foot(whole.after(rows - bottom), keys);
            return new Frame(canvas.lines(), buttons.targets());
        }

        private boolean roomy() {
            return rows >= ROOMY_ROWS;
        }

        private List<String> cautions() {
            return Wrapped.lines(view.cautions(), columns - 3 - CAUTION_MARK.length());
        }

        private void caution(List<String> lines, Area area) {
            canvas.fill(area, palette.caution());
            for (int i = 0; i < area.height(); i++) {
                boolean cut = i == area.height() - 1 && lines.size() > area.height();
                canvas.put(area, i, CAUTION_MARK + (cut ? shortened(lines.get(i)) : lines.get(i)), palette.caution());
            }
        }

        /** The line with dots behind it, to show that more was to be said. */
        private String shortened(String line) {
            return Wrapped.lines(line, columns - 3 - CAUTION_MARK.length() - MORE.length())
                            .get(0)
                    + MORE;
        }

        private Block question(int width) {
            String text = view.held() ? texts.of("held") : view.question();
            List<String> lines = Wrapped.lines(text, width - 4);
            int air = roomy() ? 1 : 0;
            return new Block(0, Math.min(2, Math.max(1, lines.size())), lines.size() + 2 * air, area -> {
                int above = Math.max(0, (area.height() - lines.size()) / 2);
                for (int i = 0; i < Math.min(lines.size(), area.height()); i++) {
                    canvas.put(area, above + i, lines.get(i), palette.strong().underline());
                }
            });
        }

        private Block hint(int width) {
            List<String> lines = Wrapped.lines(view.hint(), width - 6);
            return new Block(4, Math.min(1, lines.size()), Math.min(3, lines.size()), area -> {
                for (int i = 0; i < area.height(); i++) {
                    canvas.put(area, i, "* " + lines.get(i), palette.strong());
                }
            });
        }

        private Block answers(int width) {
            List<String> lines = Wrapped.lines(view.answers(), width - 4);
            int most = roomy() ? lines.size() : Math.min(2, lines.size());
            return new Block(5, Math.min(1, most), most, area -> {
                // The newest words are the last ones.
                int from = Math.max(0, lines.size() - area.height());
                for (int i = from; i < lines.size(); i++) {
                    canvas.put(area, i - from, lines.get(i), palette.plain());
                }
            });
        }

        private Block heard() {
            View.Heard heard = view.heard();
            boolean two = roomy() && !heard.meaning().isEmpty();
            return new Block(2, 1, two ? 2 : 1, area -> {
                String words = texts.of("heard") + "  "
                        + (heard.words().isEmpty() ? texts.of("heard.nothing") : heard.words())
                        + (heard.partial() ? " ..." : "");
                AttributedStyle style = heard.partial() ? palette.faint() : palette.plain();
                String meaning = heard.meaning().isEmpty() ? "" : "-> " + heard.meaning();
                canvas.put(area, 0, area.height() > 1 ? words : words + "  " + meaning, style);
                if (area.height() > 1) {
                    canvas.put(area, 1, meaning, palette.strong());
                }
            });
        }

        /** What decides as large as it fits; what it comes from in one line where rows are few. */
        private Block figures(int width) {
            List<View.Figure> main =
                    view.figures().stream().filter(View.Figure::deciding).toList();
            List<View.Figure> rest =
                    view.figures().stream().filter(each -> !each.deciding()).toList();
            BlockLetters.Size size = LargeFigures.size(main, width, rows);
            int above = LargeFigures.rows(main, size, width);
            int small = LargeFigures.rows(rest, BlockLetters.Size.SMALL, width);
            List<String> words = Wrapped.lines(inWords(rest), width - 4);
            int below = roomy() ? small : words.size();
            return new Block(3, main.isEmpty() ? Math.min(1, below) : above, above + below, area -> {
                large.draw(main, size, area.first(above));
                Area left = area.after(above);
                if (roomy() && left.height() >= small) {
                    large.draw(rest, BlockLetters.Size.SMALL, left);
                } else {
                    for (int i = 0; i < words.size(); i++) {
                        canvas.put(left, i, words.get(i), palette.strong());
                    }
                }
            });
        }

        /** The instruments of a simulated unit: large where there is room, else in words. */
        private Block atUnit(int width) {
            if (view.atUnit().isEmpty()) {
                return new Block(9, 0, 0, area -> {});
            }
            View.AtUnit unit = view.atUnit().get();
            List<View.Figure> marked = unit.instruments().stream()
                    .map(each -> each.deciding()
                            ? new View.Figure(texts.of("unit.asked", each.label()), each.number(), each.unit(), true)
                            : each)
                    .toList();
            List<String> sights = Wrapped.lines(unit.sights(), width - 4);
            List<String> words = Wrapped.lines(inWords(marked), width - 4);
            int tall = LargeFigures.rows(marked, BlockLetters.Size.SMALL, width);
            return new Block(1, words.size() + 1, tall + sights.size(), area -> {
                boolean fits = area.height() >= tall + 1;
                int below = fits ? tall : words.size();
                if (fits) {
                    large.draw(marked, BlockLetters.Size.SMALL, area.first(tall));
                } else {
                    for (int i = 0; i < words.size(); i++) {
                        canvas.put(area, i, words.get(i), palette.strong());
                    }
                }
                // what is seen now is the last of the sights
                int from = Math.max(0, sights.size() - (area.height() - below));
                for (int i = from; i < sights.size(); i++) {
                    canvas.put(area, below + i - from, sights.get(i), palette.plain());
                }
            });
        }

        private static String inWords(List<View.Figure> figures) {
            StringJoiner words = new StringJoiner("   ");
            figures.forEach(each -> words.add(each.label() + " " + each.number() + " " + each.unit()));
            return words.toString();
        }

        private Block verdict(int width) {
            if (view.verdict().isEmpty()) {
                return new Block(9, 0, 0, area -> {});
            }
            View.Verdict verdict = view.verdict().get();
            boolean large = rows >= 30 && BlockLetters.Size.LARGE.width(verdict.word()) <= width - 4;
            BlockLetters.Size size = large ? BlockLetters.Size.LARGE : BlockLetters.Size.SMALL;
            boolean remark = !verdict.remark().isEmpty();
            int height = size.rows() + (remark ? 1 : 0);
            // Letters that touch the edge of their band run together with the paper above it.
            int air = roomy() ? 1 : 0;
            return new Block(1, size.rows(), height + air, area -> {
                canvas.fill(area, palette.inverse());
                int above = area.height() > height ? air : 0;
                List<String> drawn = BlockLetters.draw(verdict.word(), size, unicode);
                for (int row = 0; row < drawn.size(); row++) {
                    canvas.put(area, above + row, drawn.get(row), palette.inverse());
                }
                canvas.put(area, above + size.rows(), verdict.remark(), palette.inverse());
            });
        }

        private Block readings(int width) {
            List<View.Row> shown = view.readings();
            int wide =
                    shown.stream().mapToInt(row -> text(row).length() + 3).max().orElse(1);
            int perRow = Math.max(1, (width - 4) / wide);
            int lines = (shown.size() + perRow - 1) / perRow;
            return new Block(4, Math.min(2, lines), lines, area -> {
                // The latest are the ones that are talked about.
                int first = Math.max(0, lines - area.height()) * perRow;
                for (int i = first; i < shown.size(); i++) {
                    View.Row row = shown.get(i);
                    canvas.put(
                            area.top() + (i - first) / perRow,
                            area.left() + 2 + (i - first) % perRow * wide,
                            area.right(),
                            text(row),
                            row.mark().isEmpty()
                                    ? palette.plain()
                                    : palette.strong().underline());
                }
            });
        }

        /** A line for each probe: what it shows, and whether that is offered. */
        private Block probes() {
            List<View.Row> shown = view.probes();
            return new Block(3, Math.min(1, shown.size()), shown.size(), area -> {
                for (int i = 0; i < Math.min(shown.size(), area.height()); i++) {
                    View.Row row = shown.get(i);
                    canvas.put(area, i, row.name() + "  " + row.value() + "  " + row.mark(), palette.plain());
                }
            });
        }

        private String text(View.Row row) {
            return row.name() + "  " + row.value() + (row.mark().isEmpty() ? "" : " ? " + row.mark());
        }

        private Block options(int width, int height) {
            if (view.options().isEmpty()) {
                return new Block(9, 0, 0, area -> {});
            }
            int tall = buttons.tall();
            int air = roomy() ? 1 : 0;
            int lines = Buttons.lines(view.options(), width);
            int most = roomy() ? lines : Math.min(lines, 2);
            int least = most * tall + QUESTION_ROWS + 2 <= height ? most * tall : tall;
            return new Block(0, least, most * tall + (most - 1) * air, area -> {
                int pitch = area.height() >= most * tall + (most - 1) * air ? tall + air : tall;
                int fitting = Math.max(1, (area.height() + pitch - tall) / pitch);
                buttons.place(
                        Pages.of(
                                view.options(),
                                typing.page(),
                                new View.Option(texts.of("option.more"), ""),
                                list -> Buttons.lines(list, width) <= fitting),
                        area,
                        pitch);
            });
        }

        private void foot(Area area, List<String> keys) {
            int last = area.height() - 1;
            if (typing.text().isEmpty()) {
                for (int i = 0; i < Math.min(last, keys.size()); i++) {
                    canvas.put(area, i, keys.get(i), palette.plain());
                }
            } else {
                canvas.put(area, 0, texts.of("heard.typed") + "> " + typing.text() + "_", palette.strong());
            }
            canvas.fill(area.after(last), palette.inverse());
            canvas.put(area, last, new StatusLine(texts, unicode).of(view), palette.inverse());
        }
    }
}
