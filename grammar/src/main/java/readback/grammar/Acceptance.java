package readback.grammar;

import java.util.List;

/**
 * Whether a whole utterance sounds as if it was meant for us, before anything is made of its words.
 *
 * <p>Talk of others, a radio or a knock come out of the recogniser as a few words of ours among unknown ones, or as
 * words of ours beside alternatives that have unknown ones there. So the evidence is the share of everything heard in
 * which every word is ours: the sum of the confidences of those alternatives that hold no unknown word.
 *
 * @param belief 0 (certainly not for us) to 1; 1 for typed words
 */
public record Acceptance(double belief) {

    /**
     * The least belief with which an utterance is looked at. Chosen with readback-en-5 on one half of a set of spoken
     * digits, numbers, commands and unrelated read speech, clean and with noise, 2026-11-25: the largest of ten steps
     * that loses fewer than one in a hundred utterances of any kind heard rightly; the next, 0.6, lost two in a hundred
     * digits. {@code readback measure} prints the trade-off for any recordings; figures of the other half are in the
     * model card. Both limits and the seconds: decision 0011.
     */
    public static final double LEAST = 0.5;

    /**
     * The same for an utterance that follows talk closely: it probably goes on with that talk. Of readings heard
     * rightly with 10 dB of noise one in twenty has less; the speaker then says it again. Chosen 2026-11-28 with a view
     * of all the recordings: the step that lets least talk pass, since none loses an utterance of them. They begin and
     * end in quiet.
     */
    public static final double LEAST_AMID_TALK = 0.9;

    /** Seconds of quiet after which talk no longer counts. */
    public static final double TALK_LASTS = 2;

    /**
     * Seconds after talk within which a value that nobody asked for and that is not named is asked about; decision
     * 0011.
     */
    static final double TALK_NEAR = 10;

    /** The least belief for an utterance that began so many seconds after talk that was not meant for us. */
    public static double needed(double sinceTalk) {
        return needed(sinceTalk, LEAST, LEAST_AMID_TALK);
    }

    /** The same with other limits. */
    public static double needed(double sinceTalk, double least, double leastAmidTalk) {
        return sinceTalk < TALK_LASTS ? leastAmidTalk : least;
    }

    /** What speaks for an utterance with these alternatives, best first. */
    public static Acceptance of(List<Hypothesis> hypotheses) {
        double sum = 0;
        double ours = 0;
        for (Hypothesis hypothesis : hypotheses) {
            sum += hypothesis.confidence();
            ours += isOurs(hypothesis) ? hypothesis.confidence() : 0;
        }
        // what the alternatives leave of 1 is the belief that nothing was said
        return new Acceptance(ours / Math.max(1, sum));
    }

    /** Whether the utterance is looked at with this limit. */
    public boolean granted(double least) {
        return belief >= least;
    }

    private static boolean isOurs(Hypothesis hypothesis) {
        return !hypothesis.words().isBlank()
                && !List.of(hypothesis.words().split(" ", -1)).contains(Vocabulary.UNKNOWN);
    }
}
