package readback.assistant.ear;

import java.util.Optional;
import org.vosk.Recognizer;

/**
 * Two recognisers over the same sound and phrases: one gives the alternatives, the other how sure it is of each word,
 * which the first cannot tell together with alternatives. Both find the same end, since they decode alike.
 */
final class VoskListening implements Listening {
    private final Recognizer alternatives;
    private final Recognizer words;
    private long samples;
    private boolean closed;

    VoskListening(Recognizer alternatives, Recognizer words) {
        this.alternatives = alternatives;
        this.words = words;
    }

    @Override
    public Optional<Utterance> hear(short[] chunk) {
        samples += chunk.length;
        boolean ended = alternatives.acceptWaveForm(chunk, chunk.length);
        words.acceptWaveForm(chunk, chunk.length);
        if (!ended) {
            return Optional.empty();
        }
        return VoskResult.utterance(alternatives.getResult(), words.getResult());
    }

    @Override
    public Optional<Utterance> finish() {
        return VoskResult.utterance(alternatives.getFinalResult(), words.getFinalResult());
    }

    @Override
    public String partial() {
        return VoskResult.partial(words.getPartialResult());
    }

    @Override
    public double seconds() {
        return (double) samples / Ear.RATE;
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            alternatives.close();
            words.close();
        }
    }
}
