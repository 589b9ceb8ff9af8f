package readback.calc.fluid;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Rows of reference values from a test resource; its header comment names the source. */
record ReferenceTable(List<Row> rows) {

    /** One row, its columns by name. */
    record Row(List<String> names, List<String> values) {

        String text(String column) {
            int index = names.indexOf(column);
            if (index < 0) {
                throw new IllegalArgumentException("no column " + column + " in " + names);
            }
            return values.get(index);
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return values.toString();
        }
    }

    static ReferenceTable read(String resource) {
        List<Row> rows = new ArrayList<>();
        List<String> names = List.of();
        InputStream stream = Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(resource), resource);
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.startsWith("#")) {
                    continue;
                }
                List<String> cells = List.of(line.split(",", -1));
                if (names.isEmpty()) {
                    names = cells;
                } else {
                    rows.add(new Row(names, cells));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new ReferenceTable(rows);
    }
}
