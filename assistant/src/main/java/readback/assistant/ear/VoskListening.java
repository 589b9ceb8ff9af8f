package readback.assistant.ear;

import java.util.Optional;
import org.vosk.Recognizer;
import readback.grammar.Completion;

/**
 * A recogniser over the phrases of one step, with an end of utterance of our own: nobody has been speaking for a while
 * that depends on what was said. After "one one" more of a pressure will come, after "one one eight" hardly anything;
 * what is said after a pause that was waited for is heard together with what stands before it, as one utterance.
 *
 * <p>How long nobody has been speaking is told by the level where speech stands clear of the noise. Noise hides the
 * soft parts of speech, a "point" say; there the recogniser knows better. It goes on listening after it has told a
 * pause, until it is asked for the result.
 */
final class VoskListening implements Listening {

    /**
     * Seconds that the recogniser takes to tell a pause: the endpoint rule of the bundled model for words that can be
     * all.
     */
    private static final double RECOGNISED = 0.39;

    /**
     * Words become visible up to this many seconds after they were spoken; later ones were spoken too softly to be
     * seen.
     */
    private static final double WORDS_LATE = 0.5;

    private final Recognizer recogniser;
    private final Completion completion;
    private final VoiceActivityDetector level = new VoiceActivityDetector();
    private String words = "";
    private Completion.Extent extent = Completion.Extent.WHOLE;
    private double softlySpokenAt = Double.NEGATIVE_INFINITY;
    private double pauseToldAt = Double.POSITIVE_INFINITY;
    private long samples;
    private boolean closed;

    VoskListening(Recognizer recogniser, Completion completion) {
        this.recogniser = recogniser;
        this.completion = completion;
    }

    @Override
    public Optional<Utterance> hear(short[] chunk, short[] recorded) {
        samples += chunk.length;
        level.hear(recorded);
        boolean paused = recogniser.acceptWaveForm(chunk, chunk.length);
        pauseToldAt = paused ? Math.min(pauseToldAt, seconds()) : Double.POSITIVE_INFINITY;
        String now = VoskResult.partial(recogniser.getPartialResult());
        if (!now.equals(words)) {
            words = now;
            extent = completion.of(now);
            if (level.quietSeconds() > WORDS_LATE) {
                softlySpokenAt = seconds();
            }
        }
        if (words.isEmpty()) {
            // after seconds of silence, so that the recogniser does not remember them for ever
            return paused ? over(recogniser.getResult()) : Optional.empty();
        }
        return quietSeconds() < pauseAfter(extent) ? Optional.empty() : finish();
    }

    /** Seconds of silence that end an utterance; decision 0012. */
    private static double pauseAfter(Completion.Extent said) {
        return switch (said) {
            case BEGUN -> 1.5;
            case MAY_GO_ON -> 0.5;
            case MAY_GET_DECIMALS -> 0.3;
            case WHOLE -> 0.26;
        };
    }

    private double quietSeconds() {
        double recognised = Math.max(0, seconds() - pauseToldAt + RECOGNISED);
        if (extent == Completion.Extent.BEGUN && level.quietSeconds() < WORDS_LATE) {
            // what is loud just now may be the word that is waited for
            recognised -= WORDS_LATE;
        }
        double loudnessTells =
                level.spoken() && level.clear() ? Math.min(level.quietSeconds(), seconds() - softlySpokenAt) : 0;
        return Math.max(recognised, loudnessTells);
    }

    @Override
    public Optional<Utterance> finish() {
        return over(recogniser.getFinalResult());
    }

    private Optional<Utterance> over(String result) {
        words = "";
        softlySpokenAt = Double.NEGATIVE_INFINITY;
        pauseToldAt = Double.POSITIVE_INFINITY;
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
