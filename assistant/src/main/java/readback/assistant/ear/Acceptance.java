package readback.assistant.ear;

import java.util.ArrayList;
import java.util.List;
import readback.grammar.Hypothesis;

/**
 * Judges a whole utterance: was it meant for us, or did conversation, a radio or a machine happen to sound like our words?
 * What was hardly meant keeps its alternatives, for the record, but the likeliest becomes {@link Ear#UNKNOWN}, so that
 * nothing is taken from it.
 *
 * <p>The limits lie where the curve of false words against lost utterances bends: see DEVELOPERS.md, "Acceptance".
 */
final class Acceptance {

    /** The least confidence of an utterance all of whose words are known. */
    private static final double KNOWN = 0.3;
    /** The same where some words are unknown. */
    private static final double PARTLY_KNOWN = 0.5;
    /** The same where half of the words are unknown; with more, nothing is meant for us. */
    private static final double HALF_KNOWN = 0.8;
    /** All alternatives together keep this share of what was heard. */
    private static final double SHARE_LEFT = 0.15;

    private Acceptance() {}

    /** The utterance as it is, or the same as speech that was not meant for us. */
    static Utterance judged(Utterance heard) {
        return heard.onlyUnknown() || meant(heard) ? heard : notMeant(heard);
    }

    private static boolean meant(Utterance heard) {
        String[] words = heard.words().split(" ", -1);
        int unknown = 0;
        for (String word : words) {
            unknown += word.equals(Ear.UNKNOWN) ? 1 : 0;
        }
        if (unknown == 0) {
            return heard.confidence() >= KNOWN;
        }
        if (2 * unknown > words.length) {
            return false;
        }
        return heard.confidence() >= (2 * unknown == words.length ? HALF_KNOWN : PARTLY_KNOWN);
    }

    private static Utterance notMeant(Utterance heard) {
        List<Hypothesis> judged = new ArrayList<>();
        Hypothesis.Word all =
                new Hypothesis.Word(Ear.UNKNOWN, 1 - SHARE_LEFT, heard.startSeconds(), heard.endSeconds());
        judged.add(new Hypothesis(Ear.UNKNOWN, 1 - SHARE_LEFT, List.of(all)));
        for (Hypothesis each : heard.alternatives()) {
            if (!each.words().equals(Ear.UNKNOWN)) {
                List<Hypothesis.Word> words = each.details().stream()
                        .map(w -> new Hypothesis.Word(w.word(), SHARE_LEFT * w.confidence(), w.start(), w.end()))
                        .toList();
                judged.add(new Hypothesis(each.words(), SHARE_LEFT * each.confidence(), words));
            }
        }
        return new Utterance(judged, heard.startSeconds(), heard.endSeconds());
    }
}
