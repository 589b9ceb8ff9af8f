package readback.prompts.checklist;

import java.time.Duration;
import readback.calc.caution.Activity;
import readback.calc.quantity.Quantity;

/** What a step wants done, and so what counts as its answer. */
public sealed interface Task {

    /** A number is called out. */
    record Measure(Quantity quantity) implements Task {}

    /** One option of a choice set of the grammar is named. */
    record Choose(String choice) implements Task {}

    /** Yes or no. */
    record Question(Answers answers) implements Task {

        /** What becomes of the answers. */
        public enum Answers {
            /** Both are answers like any other. */
            ALIKE,
            /** "No" calls for the remedy in the text {@code .no}, and is asked again. */
            MUST_BE_YES,
            /** Each calls for advice: the texts {@code .yes} and {@code .no}. */
            ADVISED
        }

        public boolean mustBeYes() {
            return answers == Answers.MUST_BE_YES;
        }

        public boolean advised() {
            return answers == Answers.ADVISED;
        }
    }

    /** Something is done and said to be. */
    record Acknowledge() implements Task {}

    /** Everything is done; only the order to finish closes the record, and nothing fills this step. */
    record SignOff() implements Task {}

    /** The cautions of an activity are given and said to be understood before it begins. */
    record Prepare(Activity activity) implements Task {}

    /** What was measured is judged and the outcome is spoken; fills itself. */
    record Judge(Judged what) implements Task {}

    /** Time has to pass; fills itself when it has. */
    record Await(Duration duration) implements Task {}

    /** What was measured is put aside and the checklists that repeat begin again; fills itself. */
    record MeasureAgain() implements Task {}
}
