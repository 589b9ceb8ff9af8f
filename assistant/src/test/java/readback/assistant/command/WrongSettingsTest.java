package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.Readback;

/** A settings file that an editor or a slip of the hand has spoilt. */
class WrongSettingsTest {

    @TempDir
    Path folder;

    private Path settings;

    @BeforeEach
    void place() {
        settings = folder.resolve("settings");
    }

    private void written(String text, Charset charset) throws IOException {
        Files.write(settings, text.getBytes(charset));
    }

    private Ran typed() {
        return Ran.of(
                "four ten a\n",
                "check",
                "--typed",
                "--sessions",
                folder.resolve("sessions").toString(),
                "--settings",
                settings.toString());
    }

    private String technicianInTheRecord() throws IOException {
        try (var all = Files.walk(folder)) {
            Path record = all.filter(file -> file.endsWith("session.jsonl"))
                    .findFirst()
                    .orElseThrow();
            return Files.readAllLines(record).get(0);
        }
    }

    /** The byte-order mark as The Unicode Standard, section 23.8, defines it: U+FEFF at the beginning. */
    @Test
    void aByteOrderMarkIsReadOver() throws IOException {
        written("\ufefftechnician = José\n", StandardCharsets.UTF_8);

        assertThat(typed().code()).isZero();
        assertThat(technicianInTheRecord()).contains("José");
    }

    @Test
    void aFileInUtf16IsRead() throws IOException {
        written("\ufeff# wide\r\ntechnician = José\r\n", StandardCharsets.UTF_16LE);

        assertThat(typed().code()).isZero();
        assertThat(technicianInTheRecord()).contains("José");
    }

    @Test
    void aLineInLatin1IsToldByItsNumber() throws IOException {
        written("volume = 1\ntechnician = José\n", StandardCharsets.ISO_8859_1);

        Ran ran = typed();

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .isEqualTo("readback: " + settings
                        + ", line 2: 'technician = José' has a letter that is not in UTF-8. Save the file as UTF-8.\n");
    }

    @Test
    void aCommentInLatin1DoesNoHarm() throws IOException {
        written("# für José\nvolume = 1\n", StandardCharsets.ISO_8859_1);

        assertThat(typed().code()).isZero();
    }

    @Test
    void aValueThatCannotBeIsToldByItsLine() throws IOException {
        written("\nvolume = loud\n", StandardCharsets.UTF_8);

        Ran ran = typed();

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .isEqualTo("readback: " + settings
                        + ", line 2: Invalid value for option '--volume': 'loud' is not a double.\n");
    }

    /** In a process of its own, whose configuration folder holds a spoilt file. */
    private Ran inTheUsualPlace(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Readback.class.getName()));
        command.addAll(List.of(arguments));
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(err.toFile());
        builder.environment().put("XDG_CONFIG_HOME", folder.toString());
        builder.environment().put("XDG_DATA_HOME", folder.toString());
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out, Files.readString(err));
    }

    @Test
    @Tag("slow")
    void whatTellsOfTheProgramIsNotStopped() throws Exception {
        settings = Files.createDirectories(folder.resolve("readback")).resolve("settings");
        written("nonsense\n", StandardCharsets.UTF_8);
        String fault = settings + ", line 1: 'nonsense' is not of the form name = value.";

        for (String command : List.of("--version", "help", "help check", "check --help", "settings")) {
            Ran ran = inTheUsualPlace(command.split(" ", -1));
            assertThat(ran.code()).as(command).isZero();
            assertThat(ran.out()).as(command).isNotBlank();
            assertThat(ran.err()).as(command).isEqualTo("readback: " + fault + "\n");
        }
        assertThat(inTheUsualPlace("sessions").code()).isEqualTo(2);

        // without microphone, voice and model it is over at once
        Ran selfcheck = inTheUsualPlace("selfcheck", "--json", "--voice", "none", "--model", "nowhere");
        assertThat(selfcheck.err()).isEmpty();
        assertThat(selfcheck.lastLine().path("findings").get(0).path("what").asText())
                .isEqualTo(fault);
        assertThat(selfcheck.lastLine().path("findings")).hasSizeGreaterThan(3);
    }

    @Test
    @Tag("slow")
    void aVoiceThatThereIsNotDoesNotStopTheOtherChecks() throws Exception {
        settings = Files.createDirectories(folder.resolve("readback")).resolve("settings");
        written("voice = parrot\n", StandardCharsets.UTF_8);

        Ran selfcheck = inTheUsualPlace("selfcheck", "--model", "nowhere");

        assertThat(selfcheck.out())
                .contains("bad       voice           --voice is embedded, flite, system or none, not 'parrot'.")
                .contains("session folder");
    }
}
