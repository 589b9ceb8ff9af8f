package readback.calc.fluid;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads the line-based fact files beside this class: blank lines and lines that begin with # do not count. */
final class FactLines {

    private FactLines() {}

    /** One line: its first word, and the words after it. */
    record Line(String keyword, List<String> words, String rest) {

        /** The word at a position after the keyword, as a number. */
        double number(int index) {
            return Double.parseDouble(words.get(index));
        }

        /** The rest of the line, cut at its vertical bars. */
        List<String> fields() {
            List<String> fields = new ArrayList<>();
            for (String field : rest.split("\\|", -1)) {
                fields.add(field.trim());
            }
            return fields;
        }
    }

    /** @throws IllegalStateException if the file is missing from the installation */
    static List<Line> read(String file) {
        List<Line> lines = new ArrayList<>();
        try (InputStream stream = FactLines.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("missing from the installation: " + file);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            reader.lines().forEach(text -> add(text, lines));
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
        return lines;
    }

    /** The lines of a text, as {@link #read} gives those of a file. */
    static List<Line> of(String... texts) {
        List<Line> lines = new ArrayList<>();
        for (String text : texts) {
            add(text, lines);
        }
        return lines;
    }

    private static void add(String text, List<Line> lines) {
        String line = text.strip();
        if (!line.isEmpty() && line.charAt(0) != '#') {
            int space = line.indexOf(' ');
            String rest = space < 0 ? "" : line.substring(space + 1);
            lines.add(new Line(space < 0 ? line : line.substring(0, space), words(rest), rest));
        }
    }

    /** The words between the spaces; a regular expression would take longer than all the rest of loading. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        int start = 0;
        for (int end = text.indexOf(' '); end >= 0; end = text.indexOf(' ', start)) {
            words.add(text.substring(start, end));
            start = end + 1;
        }
        words.add(text.substring(start));
        return words;
    }
}
