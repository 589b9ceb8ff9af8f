package readback.assistant.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Comma-separated values as RFC 4180 has them: a header line, lines end with CR LF, quotes where needed. A text that a
 * spreadsheet would take for a formula gets an apostrophe before it.
 */
public final class Csv {

    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final StringBuilder out = new StringBuilder();
    private final int width;

    /** A table with these columns. */
    public Csv(List<String> columns) {
        width = columns.size();
        line(columns);
    }

    /** Adds a row; see {@link Row}. */
    public Row row() {
        return new Row();
    }

    /** A row while it is filled, from left to right. */
    public final class Row {
        private final List<String> cells = new ArrayList<>();

        /** Words, made safe for spreadsheets. */
        public Row text(String text) {
            boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
            cells.add(formula ? "'" + text : text);
            return this;
        }

        /** A number in plain decimal form, or nothing. */
        public Row number(String number) {
            cells.add(number);
            return this;
        }

        /** Ends the row. */
        public void end() {
            if (cells.size() != width) {
                throw new IllegalStateException("a row of " + cells.size() + " cells in " + width + " columns");
            }
            line(cells);
        }
    }

    private void line(List<String> cells) {
        out.append(cells.stream().map(Csv::quoted).collect(Collectors.joining(",")))
                .append("\r\n");
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
