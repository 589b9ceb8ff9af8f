package readback.assistant.screen;

import java.util.ArrayList;
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
    /** A gloved finger hits three rows. */
    private static final int TARGET_ROWS = 3;

    private static final int TARGET_COLUMNS = 12;

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
        private final List<Frame.Target> targets = new ArrayList<>();

        private Sheet(View view, Typing typing, int columns, int rows) {
            this.view = view;
            this.typing = typing;
            this.columns = columns;
            this.rows = rows;
            this.canvas = new Canvas(columns, rows, palette.plain());
        }

        private Frame frame() {
            boolean wide = columns >= WIDE && rows >= ROOMY_ROWS;
            Area whole = new Area(0, 0, columns, rows);
            List<String> cautions = cautions();
            List<String> keys = Wrapped.lines(typing.keys(view.held()), columns - 3);
            boolean crowded = cautions.size() + QUESTION_ROWS + TARGET_ROWS + 3 > rows;
            int bottom = 1 + (crowded ? 1 : Math.min(2, keys.size()));
            int top = Math.min(cautions.size(), Math.max(1, rows - bottom - QUESTION_ROWS - TARGET_ROWS));
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
            return new Frame(canvas.lines(), targets);
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
                put(area, i, CAUTION_MARK + (cut ? shortened(lines.get(i)) : lines.get(i)), palette.caution());
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
                    put(area, above + i, lines.get(i), palette.strong().underline());
                }
            });
        }

        private Block hint(int width) {
            List<String> lines = Wrapped.lines(view.hint(), width - 6);
            return new Block(4, Math.min(1, lines.size()), Math.min(3, lines.size()), area -> {
                for (int i = 0; i < area.height(); i++) {
                    put(area, i, "* " + lines.get(i), palette.strong());
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
                    put(area, i - from, lines.get(i), palette.plain());
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
                put(area, 0, area.height() > 1 ? words : words + "  " + meaning, style);
                if (area.height() > 1) {
                    put(area, 1, meaning, palette.strong());
                }
            });
        }

        /** What decides as large as it fits; what it comes from in one line where rows are few. */
        private Block figures(int width) {
            List<View.Figure> main =
                    view.figures().stream().filter(View.Figure::deciding).toList();
            List<View.Figure> rest =
                    view.figures().stream().filter(each -> !each.deciding()).toList();
            BlockLetters.Size size = size(main, width);
            int large = group(main, size, width);
            int small = group(rest, BlockLetters.Size.SMALL, width);
            List<String> words = Wrapped.lines(inWords(rest), width - 4);
            int below = roomy() ? small : words.size();
            return new Block(3, main.isEmpty() ? Math.min(1, below) : large, large + below, area -> {
                draw(main, size, area.first(large));
                Area left = area.after(large);
                if (roomy() && left.height() >= small) {
                    draw(rest, BlockLetters.Size.SMALL, left);
                } else {
                    for (int i = 0; i < words.size(); i++) {
                        put(left, i, words.get(i), palette.strong());
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
            int large = group(marked, BlockLetters.Size.SMALL, width);
            return new Block(1, words.size() + 1, large + sights.size(), area -> {
                boolean fits = area.height() >= large + 1;
                int below = fits ? large : words.size();
                if (fits) {
                    draw(marked, BlockLetters.Size.SMALL, area.first(large));
                } else {
                    for (int i = 0; i < words.size(); i++) {
                        put(area, i, words.get(i), palette.strong());
                    }
                }
                // what is seen now is the last of the sights
                int from = Math.max(0, sights.size() - (area.height() - below));
                for (int i = from; i < sights.size(); i++) {
                    put(area, below + i - from, sights.get(i), palette.plain());
                }
            });
        }

        /** The rows that figures of a size take. */
        private int group(List<View.Figure> figures, BlockLetters.Size size, int width) {
            int perRow = perRow(figures, size, width);
            return (figures.size() + perRow - 1) / perRow * (size.rows() + 1);
        }

        private int perRow(List<View.Figure> figures, BlockLetters.Size size, int width) {
            return Math.max(1, (width - 4) / Math.max(1, widest(figures, size)));
        }

        private String inWords(List<View.Figure> figures) {
            StringJoiner words = new StringJoiner("   ");
            figures.forEach(each -> words.add(each.label() + " " + each.number() + " " + each.unit()));
            return words.toString();
        }

        private void draw(List<View.Figure> figures, BlockLetters.Size size, Area area) {
            int wide = widest(figures, size);
            int perRow = perRow(figures, size, area.width());
            int height = size.rows() + 1;
            for (int i = 0; i < figures.size(); i++) {
                int row = i / perRow * height;
                if (row + height <= area.height()) {
                    figure(figures.get(i), size, area.left() + 2 + i % perRow * wide, area.top() + row);
                }
            }
        }

        /** The largest in which those that decide take two fifths of the height at most. */
        private BlockLetters.Size size(List<View.Figure> main, int width) {
            for (BlockLetters.Size size : List.of(BlockLetters.Size.HUGE, BlockLetters.Size.LARGE)) {
                if (widest(main, size) <= width - 4 && 5 * group(main, size, width) <= 2 * rows) {
                    return size;
                }
            }
            return BlockLetters.Size.SMALL;
        }

        private int widest(List<View.Figure> figures, BlockLetters.Size size) {
            int widest = 0;
            for (View.Figure figure : figures) {
                int number = size.width(figure.number()) + figure.unit().length() + 1;
                widest = Math.max(widest, Math.max(number, figure.label().length()) + 2);
            }
            return widest;
        }

        private void figure(View.Figure figure, BlockLetters.Size size, int left, int top) {
            canvas.put(top, left, columns, figure.label(), palette.strong());
            List<String> drawn = BlockLetters.draw(figure.number(), size, unicode);
            for (int row = 0; row < drawn.size(); row++) {
                canvas.put(top + 1 + row, left, columns, drawn.get(row), palette.strong());
            }
            int beside = left
                    + (drawn.get(1).length() > figure.number().length()
                            ? size.width(figure.number())
                            : figure.number().length() + 1);
            canvas.put(top + 1, beside, columns, figure.unit(), palette.strong());
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
                    put(area, above + row, drawn.get(row), palette.inverse());
                }
                put(area, above + size.rows(), verdict.remark(), palette.inverse());
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
                    put(area, i, row.name() + "  " + row.value() + "  " + row.mark(), palette.plain());
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
            int tall = targetRows();
            int air = roomy() ? 1 : 0;
            int lines = Pages.lines(widths(view.options()), width - 3);
            int most = roomy() ? lines : Math.min(lines, 2);
            int least = most * tall + QUESTION_ROWS + 2 <= height ? most * tall : tall;
            return new Block(0, least, most * tall + (most - 1) * air, area -> {
                int pitch = area.height() >= most * tall + (most - 1) * air ? tall + air : tall;
                int fitting = Math.max(1, (area.height() + pitch - tall) / pitch);
                place(
                        Pages.of(
                                view.options(),
                                typing.page(),
                                new View.Option(texts.of("option.more"), ""),
                                list -> Pages.lines(widths(list), width - 3) <= fitting),
                        area,
                        pitch);
            });
        }

        private int targetRows() {
            return rows >= 40 ? TARGET_ROWS + 2 : TARGET_ROWS;
        }

        private List<Integer> widths(List<View.Option> list) {
            return list.stream()
                    .map(option -> Math.max(TARGET_COLUMNS, option.label().length() + 6) + 1)
                    .toList();
        }

        private void place(List<View.Option> shown, Area area, int pitch) {
            int left = area.left() + 2;
            int top = area.top();
            List<Integer> widths = widths(shown);
            for (int i = 0; i < shown.size(); i++) {
                if (left + widths.get(i) > area.right() && left > area.left() + 2) {
                    left = area.left() + 2;
                    top += pitch;
                }
                target(shown.get(i), new Area(left, top, left + widths.get(i) - 1, top + targetRows()));
                left += widths.get(i);
            }
        }

        private void target(View.Option option, Area area) {
            canvas.fill(area, palette.target());
            String label = "[ " + option.label() + " ]";
            int left = area.left() + Math.max(0, (area.width() - label.length()) / 2);
            canvas.put(area.top() + area.height() / 2, left, area.right(), label, palette.target());
            targets.add(new Frame.Target(
                    area, option.words().isEmpty() ? new Action.Redraw() : new Action.Utter(option.words())));
        }

        private void foot(Area area, List<String> keys) {
            int last = area.height() - 1;
            if (typing.text().isEmpty()) {
                for (int i = 0; i < Math.min(last, keys.size()); i++) {
                    put(area, i, keys.get(i), palette.plain());
                }
            } else {
                put(area, 0, texts.of("heard.typed") + "> " + typing.text() + "_", palette.strong());
            }
            canvas.fill(area.after(last), palette.inverse());
            put(area, last, status(), palette.inverse());
        }

        private String status() {
            View.Status status = view.status();
            StringBuilder line = new StringBuilder();
            line.append(texts.of(
                    status.works() ? (status.listening() ? "status.listening" : "status.waiting") : "status.lost"));
            if (status.works()) {
                line.append(' ').append(meter(status.level()));
            }
            view.timers().forEach(timer -> line.append("  ").append(timer));
            line.append("  ").append(status.voice());
            line.append("  ").append(status.microphone());
            if (status.overruns() > 0) {
                line.append("  ").append(texts.of("status.overruns", status.overruns()));
            }
            return line.toString();
        }

        private String meter(int level) {
            String full = unicode ? "■" : "#";
            String empty = unicode ? "□" : ".";
            return full.repeat(level) + empty.repeat(View.Status.LEVELS - level);
        }

        private void put(Area area, int row, String text, AttributedStyle style) {
            if (row < area.height()) {
                canvas.put(area.top() + row, area.left() + 2, area.right() - 1, text, style);
            }
        }
    }
}
