package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import readback.assistant.settings.SettingsException;

/** Setting up in plain lines on a machine without sound, and the file that comes of it. */
class SetupCommandTest {

    @TempDir
    private Path folder;

    private Path file;
    private final List<String> begun = new ArrayList<>();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("readback").resolve("settings");
    }

    /** The command whose options can be set, below one that parses. */
    private static CommandLine check() {
        Console console = Console.ofProcess();
        return Objects.requireNonNull(new CommandLine(new Overview(console, arguments -> 0))
                .addSubcommand(new CheckCommand(console))
                .getSubcommands()
                .get("check"));
    }

    private FirstRun first(String typed) {
        Console console = new Console(
                new BufferedReader(new StringReader(typed)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                OptionalInt::empty);
        return new FirstRun(
                console,
                arguments -> {
                    begun.addAll(List.of(arguments));
                    return 0;
                },
                check(),
                file,
                () -> new FirstRun.Sound(List.of(), List.of()));
    }

    private int run(String typed) {
        return first(typed).run(true, true);
    }

    private Map<String, String> read() throws SettingsException {
        return SettingsDefaults.read(file, check()).values();
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void what_is_answered_is_in_the_file_and_the_settings_reader_takes_it() throws SettingsException {
        assertThat(run("2\n1600 meters\nyes\ngauges are good to one percent\nnext\nyes\nfinish\n"))
                .isZero();

        assertThat(read()).isEqualTo(Map.of("units", "metric", "altitude-ft", "5249", "gauges", "1%"));
        assertThat(said())
                .contains("No microphone was found")
                .contains("Write these settings to " + file)
                .contains("Written.");
        assertThat(begun).isEmpty();
    }

    @Test
    void what_the_file_says_otherwise_stays_and_the_old_file_is_kept() throws Exception {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "technician = Ann\nunits = us\nclamps = 1.8\n");

        run("2\nskip\nnext\nyes\n");

        assertThat(read()).isEqualTo(Map.of("technician", "Ann", "units", "metric", "clamps", "1.0"));
        assertThat(said()).contains("That file is there already");
        assertThat(file.resolveSibling("settings.before-1")).hasContent("technician = Ann\nunits = us\nclamps = 1.8\n");
    }

    @Test
    void a_faulty_file_is_told_and_kept() throws Exception {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "unit = us\n");

        run("1\nskip\nnext\nyes\n");

        assertThat(said()).contains("line 1: there is no setting 'unit'");
        assertThat(read()).isEqualTo(Map.of("units", "us"));
        assertThat(file.resolveSibling("settings.before-1")).hasContent("unit = us\n");
    }

    @Test
    void a_place_that_cannot_be_written_is_told_and_nothing_is_lost() throws IOException {
        Files.writeString(folder.resolve("readback"), "a file in the way");

        assertThat(run("1\nskip\nnext\nyes\nno\n")).isZero();

        assertThat(said()).contains("It was not written").contains("nothing was written");
    }

    @Test
    void what_is_chosen_at_the_end_begins() {
        run("1\nskip\nnext\nyes\ndemo\n");

        assertThat(begun).containsExactly("demo");
    }

    @Test
    void after_selfcheck_it_asks_again() {
        run("1\nskip\nnext\nyes\nselfcheck\ndemo\n");

        assertThat(begun).containsExactly("selfcheck", "demo");
        assertThat(said()).doesNotContain("Welcome");
    }

    @Test
    void where_the_typed_lines_end_it_ends_without_writing() {
        assertThat(run("1\n")).isZero();
        assertThat(file).doesNotExist();
    }

    @Test
    void without_a_command_and_a_terminal_the_overview_is_printed() {
        Ran ran = Ran.of("");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("Usage: readback").contains("setup");
    }
}
