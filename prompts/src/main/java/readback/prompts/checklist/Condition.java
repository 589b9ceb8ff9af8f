package readback.prompts.checklist;

import java.util.List;
import java.util.Set;

/** When a step or a checklist applies. */
public sealed interface Condition {

    /** Whether the condition holds now. */
    boolean holds(Situation situation);

    /** Holds always. */
    record Always() implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return true;
        }
    }

    /** Holds once the slot has an answer. */
    record Answered(String slot) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.answered(slot);
        }
    }

    /** Holds once the slot holds a value. */
    record Measured(String slot) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.measured(slot);
        }
    }

    /** Holds while the slot's option is one of these. */
    record OptionIs(String slot, Set<String> options) implements Condition {
        public OptionIs {
            options = Set.copyOf(options);
        }

        @Override
        public boolean holds(Situation situation) {
            return situation.option(slot).filter(options::contains).isPresent();
        }
    }

    /** Holds while the verdict is one of these. */
    record VerdictIs(Set<String> verdicts) implements Condition {
        public VerdictIs {
            verdicts = Set.copyOf(verdicts);
        }

        @Override
        public boolean holds(Situation situation) {
            return situation.verdict().filter(verdicts::contains).isPresent();
        }
    }

    /** Holds while the judgement reports the finding. */
    record Found(String finding) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.found(finding);
        }
    }

    /** Holds while the inner one does not. */
    record Not(Condition inner) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return !inner.holds(situation);
        }
    }

    /** Holds while all do. */
    record AllOf(List<Condition> inner) implements Condition {
        public AllOf {
            inner = List.copyOf(inner);
        }

        @Override
        public boolean holds(Situation situation) {
            return inner.stream().allMatch(condition -> condition.holds(situation));
        }
    }

    /** Holds while any does. */
    record AnyOf(List<Condition> inner) implements Condition {
        public AnyOf {
            inner = List.copyOf(inner);
        }

        @Override
        public boolean holds(Situation situation) {
            return inner.stream().anyMatch(condition -> condition.holds(situation));
        }
    }
}
