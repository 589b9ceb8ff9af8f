package readback.assistant.voice;

import java.io.IOException;
import java.nio.file.Path;
import readback.assistant.sound.Samples;
import readback.assistant.sound.WaveWriter;

/**
 * The spoken side of a conversation in one wave file: what was said in its order, and silence as long as the other side
 * spoke. The file is whole at every moment. One thread at a time.
 */
public final class SpokenConversation implements AutoCloseable {
    private static final int RATE = 16000;

    /** Between two things said in a row, so that they do not run together. */
    private static final double BREATH_SECONDS = 0.25;

    private final WaveWriter file;
    private boolean speaking;

    private SpokenConversation(WaveWriter file) {
        this.file = file;
    }

    /**
     * A conversation that begins; an earlier file of the name is replaced.
     *
     * @throws IOException when the file cannot be made
     */
    public static SpokenConversation in(Path file) throws IOException {
        return new SpokenConversation(WaveWriter.create(file, RATE));
    }

    /** Adds what was said, after a breath when the last thing was said too. */
    public void say(Samples sound) throws IOException {
        if (speaking) {
            file.append(Samples.silence(BREATH_SECONDS, RATE));
        }
        file.append(sound);
        speaking = true;
    }

    /** Adds the silence of listening for {@code seconds}. */
    public void listen(double seconds) throws IOException {
        file.append(Samples.silence(seconds, RATE));
        speaking = false;
    }

    /** Seconds so far. */
    public double seconds() {
        return file.seconds();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
