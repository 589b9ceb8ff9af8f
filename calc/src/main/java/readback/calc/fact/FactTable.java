package readback.calc.fact;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a fact file that ships inside the module: words separated by blanks; a line that starts with # is a source
 * or a remark, an empty line nothing.
 */
public final class FactTable {

    private FactTable() {}

    /**
     * The lines of the file, each split into its words.
     *
     * @param owner the class beside which the file lies
     * @throws IllegalStateException if the file is not there: a broken build
     */
    public static List<List<String>> lines(Class<?> owner, String name) {
        InputStream stream = owner.getResourceAsStream(name);
        if (stream == null) {
            throw new IllegalStateException("no fact file " + name + " beside " + owner.getName());
        }
        List<List<String>> lines = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String text = line.strip();
                if (!text.isEmpty() && text.charAt(0) != '#') {
                    lines.add(List.of(text.split("\\s+")));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the fact file " + name, e);
        }
        return lines;
    }
}
