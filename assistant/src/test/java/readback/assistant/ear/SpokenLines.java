package readback.assistant.ear;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;

/** The recordings that ship with the program, with the words that their scripts say. */
public final class SpokenLines {
    private static final String FOLDER = "/readback/assistant/demo/";

    private SpokenLines() {}

    public static List<String> of(String call) {
        return new String(bytes(call + ".txt"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(line -> line.substring(line.indexOf('|') + 1).strip())
                .toList();
    }

    public static Samples sound(String call) {
        try (InputStream in = open(call + ".wav")) {
            return Recording.read(call, in).samples().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] bytes(String name) {
        try (InputStream in = open(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) {
        return Objects.requireNonNull(SpokenLines.class.getResourceAsStream(FOLDER + name), name);
    }
}
