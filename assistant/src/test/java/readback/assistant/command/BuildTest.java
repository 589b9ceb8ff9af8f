package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.RecordedSession;
import readback.assistant.session.Build;

class BuildTest {

    /** The version in the project's own description, which Maven builds. */
    private static String versionInThePom() throws Exception {
        String pom = Files.readString(Path.of("..", "pom.xml"));
        return pom.replaceFirst(
                "(?s).*?<artifactId>readback-parent</artifactId>\\s*<version>([^<]+)</version>.*", "$1");
    }

    @Test
    void the_version_is_that_of_the_project() throws Exception {
        assertThat(Build.ofThisProgram().version()).isEqualTo(versionInThePom());
        assertThat(Ran.of("", "--version").out().strip()).startsWith("Readback " + versionInThePom());
    }

    @Test
    void a_record_names_the_program_as_it_names_itself(@TempDir Path sessions) throws Exception {
        Ran.of("four ten a\n", "check", "--typed", "--sessions", sessions.toString());

        Path session;
        try (var all = Files.list(sessions)) {
            session = all.filter(Files::isDirectory).findFirst().orElseThrow();
        }
        assertThat("Readback " + RecordedSession.read(session).header().program())
                .isEqualTo(Ran.of("", "--version").out().strip());
    }

    @Test
    void a_commit_is_named_only_when_the_build_was_told_one() {
        assertThat(new Build("0.1.0", "1a2b3c4d5e6f").name()).isEqualTo("0.1.0 (1a2b3c4d5e6f)");
        assertThat(new Build("0.1.0", "unknown commit").name()).isEqualTo("0.1.0");
    }
}
