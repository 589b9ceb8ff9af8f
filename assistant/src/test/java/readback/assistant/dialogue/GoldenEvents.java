package readback.assistant.dialogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The events of the golden conversations, for tests of what is made of them elsewhere. */
public final class GoldenEvents {

    private GoldenEvents() {}

    /** The files of all golden conversations. */
    public static Stream<Path> files() throws IOException {
        return GoldenConversationTest.conversations();
    }

    /** The events of a conversation, the first being its start. */
    public static List<Event> of(Path file) {
        try {
            return GoldenConversationTest.rehearse(Files.readString(file, StandardCharsets.UTF_8)
                            .lines()
                            .toList())
                    .events();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
