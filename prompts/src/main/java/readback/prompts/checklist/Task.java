package readback.prompts.checklist;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.Stream;
import readback.calc.caution.Activity;
import readback.calc.quantity.Quantity;

/** What a step wants done, and so what counts as its answer. */
public sealed interface Task {

    /** What counts as an answer. */
    enum Reply {
        /** A value that is called out. */
        VALUE,
        /** An option of the task's set of choices. */
        OPTION,
        /** Yes or no. */
        YES_OR_NO,
        /** A word that it is done or understood. */
        DONE,
        /** The order to finish. */
        FINISH,
        /** Nothing that is said: time passes. */
        TIME,
        /** Nothing: the program itself does what is to be done. */
        NOTHING
    }

    /** What counts as the answer. */
    Reply reply();

    /** The endings of the names of the texts that a step with this task is spoken with. */
    default Stream<String> texts() {
        return Stream.of(".ask", ".again", ".why", ".how");
    }

    /** The slot that the answer fills where the checklist names none. */
    default Slot slot(String step) {
        return new Slot(step);
    }

    /** The quantity that is to be called out, if one is. */
    default Optional<Quantity> measured() {
        return Optional.empty();
    }

    /** The set of choices of which one is to be named, if one is. */
    default Optional<String> choices() {
        return Optional.empty();
    }

    /** The activity whose cautions are to be given, if there is one. */
    default Optional<Activity> prepared() {
        return Optional.empty();
    }

    /** What is to be judged, if something is. */
    default Optional<Judged> judged() {
        return Optional.empty();
    }

    /** How long is to be waited, if that is what is to be done. */
    default Optional<Duration> awaited() {
        return Optional.empty();
    }

    /**
     * Whether values that are called out while time passes belong to what was measured before, and may end the wait.
     */
    default boolean watched() {
        return false;
    }

    /** Whether only a yes lets the work go on. */
    default boolean mustBeYes() {
        return false;
    }

    /** Whether yes and no both call for advice. */
    default boolean advised() {
        return false;
    }

    /** The set of choices that holds yes and no in words of the matter, if there is one. */
    default Optional<String> inWords() {
        return Optional.empty();
    }

    /** The value that answers as well as yes or no, if there is one. */
    default Optional<Told> toldBy() {
        return Optional.empty();
    }

    /**
     * A value that answers a question after yes or no.
     *
     * @param no while this holds with the value, it means no; else yes
     */
    record Told(Quantity quantity, StepCondition no) {}

    /** A number is called out. */
    record Measure(Quantity quantity) implements Task {
        @Override
        public Reply reply() {
            return Reply.VALUE;
        }

        @Override
        public Slot slot(String step) {
            return Slot.of(quantity);
        }

        @Override
        public Optional<Quantity> measured() {
            return Optional.of(quantity);
        }
    }

    /** One option of a choice set of the grammar is named. */
    record Choose(String choice) implements Task {
        @Override
        public Reply reply() {
            return Reply.OPTION;
        }

        @Override
        public Slot slot(String step) {
            return new Slot(choice);
        }

        @Override
        public Optional<String> choices() {
            return Optional.of(choice);
        }
    }

    /**
     * Yes or no.
     *
     * @param inWords the set of choices whose options "yes" and "no" are said in words of the matter
     * @param toldBy the value that answers as well
     */
    record Question(Answers answers, Optional<String> inWords, Optional<Told> toldBy) implements Task {

        /** What becomes of the answers. */
        public enum Answers {
            /** Both are answers like any other. */
            ALIKE,
            /** "No" calls for the remedy in the text {@code .no}, and is asked again. */
            MUST_BE_YES,
            /** Each calls for advice: the texts {@code .yes} and {@code .no}. */
            ADVISED
        }

        @Override
        public Reply reply() {
            return Reply.YES_OR_NO;
        }

        @Override
        public boolean mustBeYes() {
            return answers == Answers.MUST_BE_YES;
        }

        @Override
        public boolean advised() {
            return answers == Answers.ADVISED;
        }
    }

    /** Something is done and said to be. */
    record Acknowledge() implements Task {
        @Override
        public Reply reply() {
            return Reply.DONE;
        }
    }

    /** Everything is done; only the order to finish closes the record, and nothing fills this step. */
    record SignOff() implements Task {
        @Override
        public Reply reply() {
            return Reply.FINISH;
        }
    }

    /** The cautions of an activity are given and said to be understood before it begins. */
    record Prepare(Activity activity) implements Task {
        @Override
        public Reply reply() {
            return Reply.DONE;
        }

        @Override
        public Optional<Activity> prepared() {
            return Optional.of(activity);
        }
    }

    /** What was measured is judged and the outcome is spoken; fills itself. */
    record Judge(Judged what) implements Task {
        @Override
        public Reply reply() {
            return Reply.NOTHING;
        }

        @Override
        public Optional<Judged> judged() {
            return Optional.of(what);
        }
    }

    /**
     * Time has to pass; fills itself when it has.
     *
     * @param watched whether what was measured before has to hold meanwhile
     */
    record Await(Duration duration, boolean watched) implements Task {
        @Override
        public Reply reply() {
            return Reply.TIME;
        }

        @Override
        public Stream<String> texts() {
            return Stream.concat(Task.super.texts(), Stream.of(".over"));
        }

        @Override
        public Optional<Duration> awaited() {
            return Optional.of(duration);
        }
    }

    /** What was measured is put aside and the checklists that repeat begin again; fills itself. */
    record MeasureAgain() implements Task {
        @Override
        public Reply reply() {
            return Reply.NOTHING;
        }

        @Override
        public Stream<String> texts() {
            return Stream.empty();
        }
    }
}
