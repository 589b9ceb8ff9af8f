package readback.assistant.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The settings that a file states, by name. Immutable. */
public final class SettingsFile {

    private static final SettingsFile NONE = new SettingsFile(Map.of());

    private final Map<String, String> values;

    private SettingsFile(Map<String, String> values) {
        this.values = Map.copyOf(values);
    }

    /** No settings: every option has its own default. */
    public static SettingsFile none() {
        return NONE;
    }

    /**
     * Where the file is looked for when none is named: the user's configuration folder.
     *
     * @param environment of the process
     * @param home the user's home folder
     */
    public static Path usualPlace(Map<String, String> environment, String home) {
        String xdg = environment.get("XDG_CONFIG_HOME");
        if (xdg != null && Path.of(xdg).isAbsolute()) {
            return Path.of(xdg, "readback", "settings");
        }
        String roaming = environment.get("APPDATA");
        return roaming != null && !roaming.isEmpty()
                ? Path.of(roaming, "readback", "settings")
                : Path.of(home, ".config", "readback", "settings");
    }

    /**
     * The settings of a file: lines of {@code name = value}; empty lines and lines that begin with # say nothing.
     *
     * @param known the names that may stand in it
     * @throws SettingsException when it cannot be read, a line is malformed, or a name is unknown or given twice
     */
    public static SettingsFile read(Path file, List<Setting> known) throws SettingsException {
        try {
            return parse(Files.readAllLines(file, StandardCharsets.UTF_8), file.toString(), known);
        } catch (IOException e) {
            throw new SettingsException("The settings file '" + file + "' cannot be read: " + e.getMessage() + ".", e);
        }
    }

    static SettingsFile parse(List<String> lines, String file, List<Setting> known) throws SettingsException {
        Map<String, String> values = new TreeMap<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            String where = file + ", line " + (i + 1) + ": ";
            int equals = line.indexOf('=');
            if (equals < 0) {
                throw new SettingsException(where + "'" + line + "' is not of the form name = value.");
            }
            String name = line.substring(0, equals).strip();
            if (known.stream().noneMatch(setting -> setting.name().equals(name))) {
                throw new SettingsException(where + "there is no setting '" + name + "'" + suggestion(name, known));
            }
            if (values.put(name, line.substring(equals + 1).strip()) != null) {
                throw new SettingsException(where + "'" + name + "' is given twice.");
            }
        }
        return new SettingsFile(values);
    }

    private static String suggestion(String name, List<Setting> known) {
        return Nearest.to(name, known.stream().map(Setting::name).toList())
                .map(nearest -> ": did you mean '" + nearest + "'?")
                .orElse(".");
    }

    /** What the file says for a name. */
    public Optional<String> value(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** A file that states nothing and documents everything: each setting explained, commented out. */
    public static String template(List<Setting> known) {
        StringBuilder text = new StringBuilder();
        text.append(
                "# Settings of Readback. Take the # away before a name to set it. Every setting is an option of the\n");
        text.append("# same name on the command line too (--name), which comes first.\n");
        for (Setting setting : known) {
            text.append('\n');
            setting.explanation().forEach(line -> text.append("# ").append(line).append('\n'));
            text.append('#')
                    .append(setting.name())
                    .append(" = ")
                    .append(setting.example())
                    .append('\n');
        }
        return text.toString();
    }
}
