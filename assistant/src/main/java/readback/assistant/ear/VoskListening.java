package readback.assistant.ear;

import java.util.Optional;
import org.vosk.Recognizer;

/**
 * A recogniser over the phrases of one step, with an end of utterance of our own: nobody has been speaking for
 * {@link #PAUSE}, or for {@link #PAUSE_WITHIN} where the words so far are only the beginning of what is expected. In
 * noise that hides the soft parts of speech, a "point" say, the recogniser knows better than the level whether someone
 * speaks: there its own ends count, which wait longer.
 */
final class VoskListening implements Listening {
    /** Seconds of silence that end an utterance; decision 0012. */
    private static final double PAUSE = 0.26;

    /** Seconds of silence that end one that seems to go on; decision 0012. */
    private static final double PAUSE_WITHIN = 0.6;
    /**
     * Words become visible up to this many seconds after they were spoken; later ones were spoken too softly to be
     * seen.
     */
    private static final double WORDS_LATE = 0.5;

    private final Recognizer recogniser;
    private final PhraseCompletion ends;
    private final VoiceActivityDetector level = new VoiceActivityDetector();
    private String words = "";
    private double softlySpokenAt = Double.NEGATIVE_INFINITY;
    private long samples;
    private boolean closed;

    VoskListening(Recognizer recogniser, PhraseCompletion ends) {
        this.recogniser = recogniser;
        this.ends = ends;
    }

    @Override
    public Optional<Utterance> hear(short[] chunk) {
        samples += chunk.length;
        level.hear(chunk);
        if (recogniser.acceptWaveForm(chunk, chunk.length)) {
            return over(recogniser.getResult());
        }
        String now = VoskResult.partial(recogniser.getPartialResult());
        if (!now.equals(words)) {
            words = now;
            if (level.quietSeconds() > WORDS_LATE) {
                softlySpokenAt = seconds();
            }
        }
        if (words.isEmpty() || !level.spoken() || !level.clear()) {
            return Optional.empty();
        }
        double quiet = Math.min(level.quietSeconds(), seconds() - softlySpokenAt);
        if (quiet < PAUSE || (quiet < PAUSE_WITHIN && ends.open(words))) {
            return Optional.empty();
        }
        return finish();
    }

    @Override
    public Optional<Utterance> finish() {
        return over(recogniser.getFinalResult());
    }

    private Optional<Utterance> over(String result) {
        words = "";
        softlySpokenAt = Double.NEGATIVE_INFINITY;
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
