package readback.grammar.lexicon;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A definition file: sections in brackets, "key = item; item", lines of # as comments. Order is kept. Lines before the
 * first section belong to the section "".
 *
 * @param name for messages
 */
record Definitions(String name, Map<String, Map<String, List<String>>> sections) {

    static Definitions load(String name) {
        InputStream stream = Definitions.class.getResourceAsStream("/readback/grammar/" + name);
        if (stream == null) {
            throw new IllegalStateException("the installation is incomplete: " + name + " is missing");
        }
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return parse(name, reader.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    static Definitions parse(String name, List<String> lines) {
        Map<String, Map<String, List<String>>> sections = new LinkedHashMap<>();
        Map<String, List<String>> section = new LinkedHashMap<>();
        sections.put("", section);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            if (line.startsWith("[") && line.endsWith("]")) {
                section = new LinkedHashMap<>();
                sections.put(line.substring(1, line.length() - 1), section);
                continue;
            }
            int equals = line.indexOf(" = ");
            if (equals < 0) {
                throw new IllegalStateException(name + ", line " + (i + 1) + ": no \" = \" in \"" + line + "\"");
            }
            List<String> items = Arrays.stream(line.substring(equals + 3).split(";", -1))
                    .map(String::strip)
                    .toList();
            section.computeIfAbsent(line.substring(0, equals).strip(), key -> new ArrayList<>())
                    .addAll(items);
        }
        return new Definitions(name, sections);
    }

    /** The items of a key, empty if the section lacks it. */
    List<String> items(String section, String key) {
        return sections.getOrDefault(section, Map.of()).getOrDefault(key, List.of());
    }

    /** The items of a key that must be there. */
    List<String> required(String section, String key) {
        List<String> items = items(section, key);
        if (items.isEmpty()) {
            throw new IllegalStateException(name + ": [" + section + "] lacks \"" + key + "\"");
        }
        return items;
    }
}
