package readback.assistant.screen;

import java.util.List;
import org.jline.utils.AttributedStyle;

/** Figures in large letters, label above and unit beside, as many in a row as fit. */
final class LargeFigures {

    private final Canvas canvas;
    private final int columns;
    private final AttributedStyle style;
    private final boolean unicode;

    /**
     * @param columns of the canvas
     * @param unicode whether the terminal shows block characters
     */
    LargeFigures(Canvas canvas, int columns, AttributedStyle style, boolean unicode) {
        this.canvas = canvas;
        this.columns = columns;
        this.style = style;
        this.unicode = unicode;
    }

    /** The largest in which figures take two fifths of so many rows at most. */
    static BlockLetters.Size size(List<View.Figure> main, int width, int rows) {
        for (BlockLetters.Size size : List.of(BlockLetters.Size.HUGE, BlockLetters.Size.LARGE)) {
            if (widest(main, size) <= width - 4 && 5 * rows(main, size, width) <= 2 * rows) {
                return size;
            }
        }
        return BlockLetters.Size.SMALL;
    }

    /** The rows that figures of a size take. */
    static int rows(List<View.Figure> figures, BlockLetters.Size size, int width) {
        int perRow = perRow(figures, size, width);
        return (figures.size() + perRow - 1) / perRow * (size.rows() + 1);
    }

    private static int perRow(List<View.Figure> figures, BlockLetters.Size size, int width) {
        return Math.max(1, (width - 4) / Math.max(1, widest(figures, size)));
    }

    private static int widest(List<View.Figure> figures, BlockLetters.Size size) {
        int widest = 0;
        for (View.Figure figure : figures) {
            int number = size.width(figure.number()) + figure.unit().length() + 1;
            widest = Math.max(widest, Math.max(number, figure.label().length()) + 2);
        }
        return widest;
    }

    void draw(List<View.Figure> figures, BlockLetters.Size size, Area area) {
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

    private void figure(View.Figure figure, BlockLetters.Size size, int left, int top) {
        canvas.put(top, left, columns, figure.label(), style);
        List<String> drawn = BlockLetters.draw(figure.number(), size, unicode);
        for (int row = 0; row < drawn.size(); row++) {
            canvas.put(top + 1 + row, left, columns, drawn.get(row), style);
        }
        int beside = left
                + (drawn.get(1).length() > figure.number().length()
                        ? size.width(figure.number())
                        : figure.number().length() + 1);
        canvas.put(top + 1, beside, columns, figure.unit(), style);
    }
}
