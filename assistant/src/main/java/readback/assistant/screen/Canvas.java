package readback.assistant.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;
import readback.assistant.replay.Visible;

/** A grid of cells that is painted on and then taken as lines. What lies outside is cut off. */
final class Canvas {

    private final int columns;
    private final int rows;
    private final char[][] cells;
    private final AttributedStyle[][] styles;

    Canvas(int columns, int rows, AttributedStyle paper) {
        this.columns = columns;
        this.rows = rows;
        cells = new char[rows][columns];
        styles = new AttributedStyle[rows][columns];
        for (int row = 0; row < rows; row++) {
            Arrays.fill(cells[row], ' ');
            Arrays.fill(styles[row], paper);
        }
    }

    /** Paints one line of text from a place on, as far as {@code limit}, exclusive. */
    void put(int row, int column, int limit, String text, AttributedStyle style) {
        if (row < 0 || row >= rows) {
            return;
        }
        for (int i = 0; i < text.length() && column + i < Math.min(limit, columns); i++) {
            if (column + i >= 0) {
                cells[row][column + i] = text.charAt(i) == '\u00a0' ? ' ' : Visible.cell(text.charAt(i));
                styles[row][column + i] = style;
            }
        }
    }

    /** Paints one line of text into a row of an area, with a margin; a row below the area is left out. */
    void put(Area area, int row, String text, AttributedStyle style) {
        if (row < area.height()) {
            put(area.top() + row, area.left() + 2, area.right() - 1, text, style);
        }
    }

    /** Paints an area in one style. */
    void fill(Area area, AttributedStyle style) {
        for (int row = area.top(); row < Math.min(rows, area.bottom()); row++) {
            put(row, area.left(), area.right(), " ".repeat(area.width()), style);
        }
    }

    List<AttributedString> lines() {
        List<AttributedString> lines = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            AttributedStringBuilder line = new AttributedStringBuilder(columns);
            for (int column = 0; column < columns; column++) {
                line.style(styles[row][column]);
                line.append(cells[row][column]);
            }
            lines.add(line.toAttributedString());
        }
        return lines;
    }
}
