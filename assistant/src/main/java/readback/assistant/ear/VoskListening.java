package readback.assistant.ear;

import java.util.Optional;
import org.vosk.Recognizer;

/** A recogniser over the phrases of one step. */
final class VoskListening implements Listening {
    private final Recognizer recogniser;
    private long samples;
    private boolean closed;

    VoskListening(Recognizer recogniser) {
        this.recogniser = recogniser;
    }

    @Override
    public Optional<Utterance> hear(short[] chunk) {
        samples += chunk.length;
        if (!recogniser.acceptWaveForm(chunk, chunk.length)) {
            return Optional.empty();
        }
        return VoskResult.utterance(recogniser.getResult());
    }

    @Override
    public Optional<Utterance> finish() {
        return VoskResult.utterance(recogniser.getFinalResult());
    }

    @Override
    public String partial() {
        return VoskResult.partial(recogniser.getPartialResult());
    }

    @Override
    public double seconds() {
        return (double) samples / Ear.RATE;
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            recogniser.close();
        }
    }
}
