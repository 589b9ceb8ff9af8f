package readback.assistant.ear;

import java.util.Optional;
import org.vosk.Recognizer;
import readback.grammar.Completion;

/**
 * A recogniser over the phrases of one step, with an end of utterance of our own. What is said after a pause that was
 * waited for is heard together with what stands before it, as one utterance: the recogniser goes on listening after it
 * has told a pause, until it is asked for the result.
 */
final class VoskListening implements Listening {

    private final Recognizer recogniser;
    private final Endpointer endpointer;
    private String words = "";
    private long samples;
    private boolean closed;

    VoskListening(Recognizer recogniser, Completion completion) {
        this.recogniser = recogniser;
        this.endpointer = new Endpointer(completion::of);
    }

    @Override
    public Optional<Utterance> hear(short[] chunk, short[] recorded) {
        samples += chunk.length;
        boolean paused = recogniser.acceptWaveForm(chunk, chunk.length);
        words = VoskResult.partial(recogniser.getPartialResult());
        endpointer.hear(seconds(), recorded, paused, words);
        if (words.isEmpty()) {
            // after seconds of silence, so that the recogniser does not remember them for ever
            return paused ? over(recogniser.getResult()) : Optional.empty();
        }
        return endpointer.over() ? finish() : Optional.empty();
    }

    @Override
    public Optional<Utterance> finish() {
        return over(recogniser.getFinalResult());
    }

    private Optional<Utterance> over(String result) {
        words = "";
        endpointer.begin();
        return VoskResult.utterance(result);
    }

    @Override
    public String partial() {
        return words;
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
