package readback.prompts.checklist;

import java.util.Optional;

/** What a {@link StepCondition} may ask about a session. */
public interface ConditionContext {

    /** Whether the slot has any answer, also "unknown" or "skipped". */
    boolean answered(String slot);

    /** The chosen option of the slot, in the words of the grammar's choice sets; "yes" or "no" for questions. */
    Optional<String> option(String slot);

    /** Whether the slot holds a value that was called out. */
    boolean measured(String slot);

    /** The name of the verdict reached with the readings so far, as in "add"; empty before there is one. */
    Optional<String> verdict();

    /** Whether the judgement found this, as in "outdoor-too-cold". */
    boolean found(String finding);
}
