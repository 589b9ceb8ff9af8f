package readback.grammar;

import java.util.List;
import java.util.Optional;

/** What to do with an utterance once alternatives, confidence and plausibility were weighed. */
public sealed interface Decision {

    /** What the case of this kind makes of the decision. */
    <T> T fold(Cases<T> cases);

    /** What is taken, if something is. */
    default Optional<Accept> accepted() {
        return Optional.empty();
    }

    /** Whether the utterance was not meant for us. */
    default boolean ignored() {
        return false;
    }

    /** What is to be made of each kind of decision. */
    interface Cases<T> {

        T accept(Accept accept);

        T askBetween(AskBetween between);

        T askAgain(AskAgain again);

        T ignore(Ignore ignore);
    }

    /**
     * Take it and read it back.
     *
     * @param confidence 0 to 1
     * @param doubtful whether the technician must say yes first (unusual or weakly heard)
     */
    record Accept(Meaning meaning, double confidence, boolean doubtful) implements Decision {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.accept(this);
        }

        @Override
        public Optional<Accept> accepted() {
            return Optional.of(this);
        }
    }

    /** Two values are possible: ask "one five, or five zero?". */
    record AskBetween(List<Meaning> candidates) implements Decision {
        public AskBetween {
            candidates = List.copyOf(candidates);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.askBetween(this);
        }
    }

    /** Nothing can be taken; the reason says what was wrong. */
    record AskAgain(Meaning.NotUnderstood reason) implements Decision {

        /** Whether a number was said where one was asked for, too weakly to take or to pass over. */
        public boolean numberUnclear() {
            return reason.why().kind() == Reason.Kind.NUMBER_UNCLEAR;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.askAgain(this);
        }
    }

    /** Not meant for us: noise, or conversation outside the vocabulary. */
    record Ignore(Ignorance why) implements Decision {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.ignore(this);
        }

        @Override
        public boolean ignored() {
            return true;
        }
    }

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
