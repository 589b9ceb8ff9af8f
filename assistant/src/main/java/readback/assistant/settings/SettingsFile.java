package readback.assistant.settings;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The settings that a file states, by name. Immutable. */
public final class SettingsFile {

    private static final SettingsFile NONE = new SettingsFile(Map.of());

    private static final char BYTE_ORDER_MARK = '\ufeff';

    private final Map<String, Line> lines;

    private SettingsFile(Map<String, Line> lines) {
        this.lines = new TreeMap<>(lines);
    }

    /**
     * What one line sets.
     *
     * @param where file and number of the line, for a complaint
     */
    private record Line(String value, String where) {}

    /** Looks whether a setting can have a value; gives the reason where it cannot. */
    @FunctionalInterface
    public interface Trial {
        Optional<String> fault(String name, String value);
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
     * The settings of a file: lines of {@code name = value}; empty lines and lines that begin with # say nothing. The
     * file is in UTF-8, or in UTF-16 with a byte-order mark, as editors on Windows write it.
     *
     * @param known the names that may stand in it
     * @throws SettingsException when it cannot be read, a line is malformed or in another encoding, or a name is
     *     unknown or given twice
     */
    public static SettingsFile read(Path file, List<Setting> known) throws SettingsException {
        try {
            return parse(lines(Files.readAllBytes(file), file.toString()), file.toString(), known);
        } catch (IOException e) {
            throw new SettingsException("The settings file '" + file + "' cannot be read: " + e.getMessage() + ".", e);
        }
    }

    /** The lines of the file. A comment may be in any encoding. */
    private static List<String> lines(byte[] file, String name) throws SettingsException {
        boolean wide = begins(file, 0xff, 0xfe) || begins(file, 0xfe, 0xff);
        if (wide) {
            return new String(file, StandardCharsets.UTF_16).lines().toList();
        }
        List<String> lines = new ArrayList<>();
        int from = 0;
        while (from < file.length) {
            int to = from;
            while (to < file.length && file[to] != '\n') {
                to++;
            }
            lines.add(line(ByteBuffer.wrap(file, from, to - from), name + ", line " + (lines.size() + 1)));
            from = to + 1;
        }
        if (!lines.isEmpty() && lines.get(0).indexOf(BYTE_ORDER_MARK) == 0) {
            lines.set(0, lines.get(0).substring(1));
        }
        return lines;
    }

    private static boolean begins(byte[] file, int first, int second) {
        return file.length >= 2 && file[0] == (byte) first && file[1] == (byte) second;
    }

    private static String line(ByteBuffer bytes, String where) throws SettingsException {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(bytes.duplicate()).toString();
        } catch (CharacterCodingException otherwise) {
            String text = StandardCharsets.ISO_8859_1.decode(bytes).toString();
            if (text.isBlank() || text.strip().startsWith("#")) {
                return "";
            }
            throw new SettingsException(
                    where + ": '" + text.strip() + "' has a letter that is not in UTF-8. Save the file as UTF-8.",
                    otherwise);
        }
    }

    static SettingsFile parse(List<String> lines, String file, List<Setting> known) throws SettingsException {
        Map<String, Line> values = new TreeMap<>();
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
            if (values.put(name, new Line(line.substring(equals + 1).strip(), where)) != null) {
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
        return Optional.ofNullable(lines.get(name)).map(Line::value);
    }

    /** What it states, by name. */
    public Map<String, String> values() {
        Map<String, String> values = new TreeMap<>();
        lines.forEach((name, line) -> values.put(name, line.value()));
        return values;
    }

    /** How many settings it states. */
    public int size() {
        return lines.size();
    }

    /**
     * This file, if every value passes.
     *
     * @throws SettingsException when one does not; it names the line
     */
    public SettingsFile passing(Trial trial) throws SettingsException {
        for (Map.Entry<String, Line> each : lines.entrySet()) {
            Optional<String> fault = trial.fault(each.getKey(), each.getValue().value());
            if (fault.isPresent()) {
                throw new SettingsException(each.getValue().where() + fault.get());
            }
        }
        return this;
    }

    /**
     * Puts a text in the place of a file, whole or not at all. A file that is there already is kept beside it.
     *
     * @return where it is kept
     * @throws IOException when it cannot be written; the file is as it was then
     */
    public static Optional<Path> replace(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.writeString(part, text, StandardCharsets.UTF_8);
            Optional<Path> kept = Files.exists(file) ? Optional.of(beside(file)) : Optional.empty();
            if (kept.isPresent()) {
                Files.copy(file, kept.get());
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            return kept;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** A name beside the file that nothing has yet. */
    private static Path beside(Path file) {
        int number = 1;
        while (Files.exists(file.resolveSibling(file.getFileName() + ".before-" + number))) {
            number++;
        }
        return file.resolveSibling(file.getFileName() + ".before-" + number);
    }

    /** A file that states nothing and documents everything: each setting explained, commented out. */
    public static String template(List<Setting> known) {
        return text(known, Map.of());
    }

    /**
     * A file that documents everything: each setting explained, those that have no value commented out.
     *
     * @param values by name; those of unknown names are left out
     */
    public static String text(List<Setting> known, Map<String, String> values) {
        StringBuilder text = new StringBuilder();
        text.append(
                "# Settings of Readback. Take the # away before a name to set it. Every setting is an option of the\n");
        text.append("# same name on the command line too (--name), which comes first.\n");
        for (Setting setting : known) {
            text.append('\n');
            setting.explanation().forEach(line -> text.append("# ").append(line).append('\n'));
            String value = values.get(setting.name());
            text.append(value == null ? "#" : "")
                    .append(setting.name())
                    .append(" = ")
                    .append(value == null ? setting.example() : value)
                    .append('\n');
        }
        return text.toString();
    }
}
