package readback.grammar;

import java.util.List;

/** What to do with an utterance once alternatives, confidence and plausibility were weighed. */
public sealed interface Decision {

    /**
     * Take it and read it back.
     *
     * @param confidence 0 to 1
     * @param doubtful whether the technician must say yes first (unusual or weakly heard)
     */
    record Accept(Meaning meaning, double confidence, boolean doubtful) implements Decision {}

    /** Two values are possible: ask "one five, or five zero?". */
    record AskBetween(List<Meaning> candidates) implements Decision {
        public AskBetween {
            candidates = List.copyOf(candidates);
        }
    }

    /** Nothing can be taken; the reason says what was wrong. */
    record AskAgain(Meaning.NotUnderstood reason) implements Decision {}

    /** Not meant for us: noise, or conversation outside the vocabulary. */
    record Ignore(Ignorance why) implements Decision {}

    /** Why words are passed over in silence. */
    enum Ignorance {
        NOTHING_SAID,
        UNKNOWN_WORDS,
        MOSTLY_UNKNOWN_WORDS,
        /** It seems to go on with talk that was not meant for us. */
        AMID_TALK,
        /** It does not sound as if it was meant for us. */
        NOT_FOR_US,
        /** The session is over. */
        CLOSED
    }
}
