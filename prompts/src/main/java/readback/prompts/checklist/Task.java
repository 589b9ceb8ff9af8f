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
    record Question() implements Task {}

    /** Something is done and said to be. */
    record Acknowledge() implements Task {}

    /** The cautions of an activity are given and said to be understood before it begins. */
    record Prepare(Activity activity) implements Task {}

    /** The readings are judged and the verdict is spoken; fills itself. */
    record Judge() implements Task {}

    /** Time has to pass; fills itself when it has. */
    record Await(Duration duration) implements Task {}
}
