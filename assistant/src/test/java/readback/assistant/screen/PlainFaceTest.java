package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import readback.assistant.session.PlainLines;
import readback.prompts.text.Language;

/** What a pipe, a log or a screen reader gets besides the words of both sides. */
class PlainFaceTest {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final PlainFace face = new PlainFace(
            new PlainLines(
                    new PrintStream(bytes, true, StandardCharsets.UTF_8), Language.english(), OptionalInt.empty()),
            new ScreenTexts(Language.english()));

    private static View view(boolean listening, long overruns, String hint) {
        return ViewsForTests.listening(new View.Status("headset", true, listening, 4, overruns, "voice flite"), hint);
    }

    private List<String> lines() {
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void itTellsWhenItBeginsToListenAndToWhat() {
        face.show(view(false, 0, ""));
        face.show(view(true, 0, ""));
        face.show(view(true, 0, ""));

        assertThat(lines()).containsExactly("listening   headset");
    }

    @Test
    void lostSoundIsToldEachTimeItHappens() {
        face.show(view(true, 0, ""));
        bytes.reset();

        face.show(view(true, 1, ""));
        face.show(view(true, 1, ""));
        face.show(view(true, 3, ""));

        assertThat(lines())
                .containsExactly(
                        "note        Sound was lost, 1 times so far: the machine is too busy.",
                        "note        Sound was lost, 3 times so far: the machine is too busy.");
    }

    @Test
    void troubleIsToldOnce() {
        face.show(view(false, 0, "Too loud here."));
        face.show(view(false, 0, "Too loud here."));

        assertThat(lines()).containsExactly("note        Too loud here.");
    }
}
