package readback.prompts.checklist;

import java.util.Optional;
import readback.calc.charge.Verdict;

/** What a {@link StepCondition} may ask about a session. */
public interface ConditionContext {

    /** Whether the slot has any answer, also "unknown" or "skipped". */
    boolean answered(Slot slot);

    /** The chosen option of the slot, in the words of the grammar's choice sets; "yes" or "no" for questions. */
    Optional<String> option(Slot slot);

    /** Whether the slot holds a value that was called out. */
    boolean measured(Slot slot);

    /** The verdict reached with the readings so far; empty before there is one. */
    Optional<Verdict.Kind> verdict();

    /** Whether the judgement found this, as in "outdoor-too-cold". */
    boolean found(String finding);
}
