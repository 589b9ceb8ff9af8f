package readback.assistant.ear;

import java.util.function.Function;
import readback.grammar.Completion;

/**
 * Tells when an utterance is over: nobody has been speaking for a while that depends on what was said and how. After
 * "one one" more of a pressure will come, after "one one eight" hardly anything; and whoever pauses between his words
 * pauses before the next one too.
 *
 * <p>How long nobody has been speaking is told by the level where speech stands clear of the noise. Noise hides the
 * soft parts of speech, a "point" say; there the recogniser knows better. One thread.
 */
final class Endpointer {

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

    /** The next pause of a speaker may be longer than his longest so far by this factor and this many seconds. */
    private static final double UNEVEN = 1.25;

    private static final double MARGIN = 0.1;

    /** So long, in seconds, is waited at most for what may come but need not; decision 0012. */
    private static final double LONGEST_FOR_MORE = 0.9;

    private final Function<String, Completion.Extent> completion;
    private final VoiceActivityDetector level = new VoiceActivityDetector();
    private String words = "";
    private Completion.Extent extent = Completion.Extent.WHOLE;
    private double softlySpokenAt = Double.NEGATIVE_INFINITY;
    private double pauseToldAt = Double.POSITIVE_INFINITY;
    private double now;
    private double quiet;
    /** How long nobody spoke before the sound of now, of which no word is seen yet. */
    private double pauseBefore;

    private double longestPause;

    Endpointer(Function<String, Completion.Extent> completion) {
        this.completion = completion;
    }

    /**
     * Takes what was heard until now.
     *
     * @param seconds of sound since the beginning
     * @param recorded the newest sound
     * @param paused whether the recogniser tells a pause
     * @param heard the words of the open utterance as they look now
     */
    void hear(double seconds, short[] recorded, boolean paused, String heard) {
        now = seconds;
        level.hear(recorded);
        pauseToldAt = paused ? Math.min(pauseToldAt, now) : Double.POSITIVE_INFINITY;
        if (!heard.equals(words)) {
            changed(heard);
        }
        double before = quiet;
        quiet = quietSeconds();
        if (quiet < before) {
            pauseBefore = Math.max(pauseBefore, before);
        }
    }

    private void changed(String heard) {
        // what was silent before the first word is no pause of the speaker
        longestPause = words.isEmpty() ? 0 : Math.max(longestPause, pauseBefore);
        pauseBefore = 0;
        words = heard;
        extent = completion.apply(heard);
        if (level.quietSeconds() > WORDS_LATE) {
            softlySpokenAt = now;
        }
    }

    /** Whether the utterance is over; never while no word was heard. */
    boolean over() {
        return !words.isEmpty() && quiet >= pauseThatEnds();
    }

    /** Seconds of silence that end the utterance as it stands; decision 0012. */
    private double pauseThatEnds() {
        double least = pause(extent);
        boolean more = extent == Completion.Extent.MAY_GO_ON || extent == Completion.Extent.MAY_GET_DECIMALS;
        return more ? Math.max(least, Math.min(LONGEST_FOR_MORE, longestPause * UNEVEN + MARGIN)) : least;
    }

    /** Seconds of silence that end an utterance of somebody who does not pause. */
    static double pause(Completion.Extent extent) {
        return switch (extent) {
            case BEGUN -> 1.5;
            case MAY_GO_ON -> 0.5;
            case MAY_GET_DECIMALS -> 0.3;
            case WHOLE -> 0.26;
        };
    }

    private double quietSeconds() {
        double recognised = Math.max(0, now - pauseToldAt + RECOGNISED);
        if (extent == Completion.Extent.BEGUN && level.quietSeconds() < WORDS_LATE) {
            // what is loud just now may be the word that is waited for
            recognised -= WORDS_LATE;
        }
        double loudnessTells =
                level.spoken() && level.clear() ? Math.min(level.quietSeconds(), now - softlySpokenAt) : 0;
        return Math.max(recognised, loudnessTells);
    }

    /** The utterance was taken; the next one begins. */
    void begin() {
        words = "";
        extent = Completion.Extent.WHOLE;
        softlySpokenAt = Double.NEGATIVE_INFINITY;
        pauseToldAt = Double.POSITIVE_INFINITY;
        quiet = 0;
        pauseBefore = 0;
        longestPause = 0;
    }
}
