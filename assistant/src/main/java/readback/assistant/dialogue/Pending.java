package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Meaning;
import readback.prompts.checklist.JobId;
import readback.prompts.text.Message;

/** A question of the dialogue's own that comes before the checklist goes on. */
public sealed interface Pending {

    /** What the case of this kind makes of the question. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of question. */
    interface Cases<T> {

        T confirm(Confirm confirm);

        T between(Between between);

        T movedAgain(MovedAgain movedAgain);

        T leave(Leave leave);

        T goTo(GoTo goTo);
    }

    /** The question, for asking again. */
    Message question();

    /** The quantity that is in doubt, if one is. */
    default Optional<Quantity> inDoubt() {
        return Optional.empty();
    }

    /** The value that is in doubt, the likeliest of several, if one is. */
    default Optional<Reading> doubted() {
        return Optional.empty();
    }

    /** The values of which one is meant; none where it asks for something else. */
    default List<Reading> candidates() {
        return List.of();
    }

    /** Whether saying this value once more is a yes to it. */
    default boolean confirmedBy(Reading said) {
        return false;
    }

    /** Whether it asks about leaving. */
    default boolean leaving() {
        return false;
    }

    /** The job that a yes leads to, if it asks for one. */
    default Optional<JobId> leadsTo() {
        return Optional.empty();
    }

    /** The choice set whose options answer it, if it asks for one. */
    default Optional<String> choice() {
        return Optional.empty();
    }

    /** A doubt about what was heard. It lapses when the work goes on without an answer. */
    sealed interface Doubt extends Pending {

        /** The value in doubt; the likeliest of several. */
        Reading reading();

        /** How many other values were taken since it was asked about. */
        int passedOver();

        /** The same doubt after so many more values. */
        Doubt passedOverBy(int values);

        @Override
        default Optional<Quantity> inDoubt() {
            return Optional.of(reading().quantity());
        }

        @Override
        default Optional<Reading> doubted() {
            return Optional.of(reading());
        }
    }

    /** A value that needs an explicit yes. */
    record Confirm(Given given, Message question, int passedOver) implements Doubt {

        static Confirm of(Given given, Message question) {
            return new Confirm(given, question, 0);
        }

        @Override
        public Reading reading() {
            return given.reading();
        }

        @Override
        public Confirm passedOverBy(int values) {
            return new Confirm(given, question, passedOver + values);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.confirm(this);
        }

        @Override
        public boolean confirmedBy(Reading said) {
            return said.equals(reading());
        }
    }

    /** Two values sound alike: one of them is meant. */
    record Between(List<Reading> candidates, Message question, int passedOver) implements Doubt {
        public Between {
            candidates = List.copyOf(candidates);
        }

        static Between of(List<Reading> candidates, Message question) {
            return new Between(candidates, question, 0);
        }

        @Override
        public Reading reading() {
            return candidates.get(0);
        }

        @Override
        public Between passedOverBy(int values) {
            return new Between(candidates, question, passedOver + values);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.between(this);
        }

        @Override
        public boolean confirmedBy(Reading said) {
            return candidates.contains(said);
        }
    }

    /**
     * Refrigerant was said to be moved once more before the next measurement: besides the first amount, or in its
     * place?
     *
     * @param before the amount that stands
     * @param again the amount said now
     */
    record MovedAgain(Reading before, Reading again, Message question) implements Pending {

        /** The choice set of the answers. */
        private static final String CHOICE = "moved-again";

        /**
         * The answer that adds the amounts up; the other option of the set puts the second in the place of the first.
         */
        public static final Meaning.Choice SAID_MORE = new Meaning.Choice(CHOICE, "more");

        /** Both amounts together, in the unit of the second; in pounds and ounces if ounces come after such. */
        Reading sum() {
            boolean ouncesAfterPounds = before.unit() == Unit.POUND_AND_OUNCES && again.unit() == Unit.OUNCE;
            return (ouncesAfterPounds ? before : again).withBase(before.base() + again.base());
        }

        @Override
        public Optional<Quantity> inDoubt() {
            return Optional.of(again.quantity());
        }

        @Override
        public Optional<String> choice() {
            return Optional.of(CHOICE);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.movedAgain(this);
        }
    }

    /** A job was spoken of: is it to be done now? It lapses when something else is said. */
    record GoTo(JobId job, Message question) implements Pending {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.goTo(this);
        }

        @Override
        public Optional<JobId> leadsTo() {
            return Optional.of(job);
        }
    }

    /** The session was to be finished before everything that was asked has its answer. */
    record Leave(Message question) implements Pending {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.leave(this);
        }

        @Override
        public boolean leaving() {
            return true;
        }
    }
}
