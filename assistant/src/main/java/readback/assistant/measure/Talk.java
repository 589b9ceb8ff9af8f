package readback.assistant.measure;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.ear.Utterance;
import readback.grammar.Acceptance;

/**
 * The utterances of one clip one after the other, as the dialogue meets them: what is not looked at is talk, and what
 * follows right after it must be heard more clearly to count. Owned by one thread.
 */
final class Talk {

    private final double least;
    private final double leastAmidTalk;
    private double endedAt = Double.NEGATIVE_INFINITY;

    Talk(double least, double leastAmidTalk) {
        this.least = least;
        this.leastAmidTalk = leastAmidTalk;
    }

    /** With the limits that the dialogue uses. */
    static Talk asInDialogue() {
        return new Talk(Acceptance.LEAST, Acceptance.LEAST_AMID_TALK);
    }

    /** Those of a clip's utterances that are looked at. */
    List<Utterance> lookedAt(List<Utterance> utterances) {
        List<Utterance> lookedAt = new ArrayList<>();
        for (Utterance utterance : utterances) {
            if (granted(utterance)) {
                lookedAt.add(utterance);
            }
        }
        return lookedAt;
    }

    private boolean granted(Utterance utterance) {
        double needed = Acceptance.needed(sinceTalk(utterance), least, leastAmidTalk);
        boolean granted = Acceptance.of(utterance.alternatives()).granted(needed);
        heard(utterance, granted);
        return granted;
    }

    /** Seconds of quiet between the last talk and this utterance. */
    double sinceTalk(Utterance utterance) {
        return utterance.startSeconds() - endedAt;
    }

    /** The utterance was meant for us, or was talk. */
    void heard(Utterance utterance, boolean forUs) {
        endedAt = forUs ? Double.NEGATIVE_INFINITY : utterance.endSeconds();
    }
}
