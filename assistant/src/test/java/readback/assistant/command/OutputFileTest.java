package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFileTest {

    private static final String RECORD = "{\"type\":\"header\",\"schema\":4}\n";

    @TempDir
    private Path folder;

    private Path session() throws IOException {
        Path session = Files.createDirectories(folder.resolve("2026-07-14"));
        Files.createDirectories(session.resolve("audio"));
        Files.writeString(session.resolve("session.jsonl"), RECORD);
        return session;
    }

    @ParameterizedTest
    @ValueSource(strings = {"session.jsonl", "remarks.jsonl", "report.html", "audio/00002.wav"})
    void nothing_is_written_into_a_session_even_by_force(String name) throws IOException {
        Path file = session().resolve(name);

        assertThatThrownBy(() -> OutputFile.at(file, true).write("page"))
                .isInstanceOf(CommandFailure.class)
                .hasMessageContaining("belongs to a recorded session");
        assertThat(folder.resolve("2026-07-14/session.jsonl")).hasContent(RECORD.strip());
    }

    @Test
    void a_record_that_was_renamed_is_still_a_record() throws IOException {
        Path kept = Files.writeString(folder.resolve("kept.txt"), RECORD);

        assertThatThrownBy(() -> OutputFile.at(kept, true)).hasMessageContaining("never written over");
        assertThatThrownBy(() -> OutputFile.at(folder.resolve(".readback-index"), true))
                .hasMessageContaining("never written over");
    }

    @Test
    void a_link_to_a_record_does_not_lead_to_it() throws IOException {
        Path link =
                Files.createSymbolicLink(folder.resolve("page.html"), session().resolve("session.jsonl"));

        assertThatThrownBy(() -> OutputFile.at(link, true)).hasMessageContaining("never written over");
    }

    @Test
    void another_file_is_written_over_only_by_force() throws IOException {
        Path page = Files.writeString(folder.resolve("page.html"), "old");

        assertThatThrownBy(() -> OutputFile.at(page, false))
                .hasMessageContaining("is there already: name another file, or add --force");
        OutputFile.at(page, true).write("new");

        assertThat(page).hasContent("new");
    }

    @Test
    void what_fails_half_way_leaves_the_old_file_and_nothing_else() throws IOException {
        Path page = Files.writeString(folder.resolve("page.html"), "old");

        assertThatThrownBy(() -> OutputFile.at(page, true).write(out -> {
                    out.write("half");
                    throw new IOException("No space left on device");
                }))
                .isInstanceOf(CommandFailure.class)
                .hasMessageContaining("No space left on device");

        assertThat(page).hasContent("old");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(page);
        }
    }

    @Test
    void a_folder_is_no_file() {
        assertThatThrownBy(() -> OutputFile.at(folder, true)).hasMessageContaining("is a folder: name a file");
    }
}
