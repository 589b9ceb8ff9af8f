package readback.prompts.checklist;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import readback.calc.charge.Verdict;

/** When a step or a checklist applies. */
public sealed interface StepCondition {

    /** Whether the condition holds now. */
    boolean holds(ConditionContext situation);

    /** The conditions that this one is made of, down to those that ask about one thing; itself where it is one. */
    default Stream<StepCondition> leaves() {
        return Stream.of(this);
    }

    /** Holds always. */
    record Always() implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return true;
        }
    }

    /** Holds once the slot has an answer. */
    record Answered(Slot slot) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return situation.answered(slot);
        }
    }

    /** Holds once the slot holds a value. */
    record Measured(Slot slot) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return situation.measured(slot);
        }
    }

    /** Holds while the slot's option is one of these. */
    record OptionIs(Slot slot, Set<String> options) implements StepCondition {
        public OptionIs {
            options = Set.copyOf(options);
        }

        @Override
        public boolean holds(ConditionContext situation) {
            return situation.option(slot).filter(options::contains).isPresent();
        }
    }

    /** Holds while the verdict is one of these. */
    record VerdictIs(Set<Verdict.Kind> verdicts) implements StepCondition {
        public VerdictIs {
            verdicts = Set.copyOf(verdicts);
        }

        @Override
        public boolean holds(ConditionContext situation) {
            return situation.verdict().filter(verdicts::contains).isPresent();
        }
    }

    /** Holds while the judgement reports the finding. */
    record Found(String finding) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return situation.found(finding);
        }
    }

    /** Holds while the inner one does not. */
    record Not(StepCondition inner) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return !inner.holds(situation);
        }

        @Override
        public Stream<StepCondition> leaves() {
            return inner.leaves();
        }
    }

    /** Holds while all do. */
    record AllOf(List<StepCondition> inner) implements StepCondition {
        public AllOf {
            inner = List.copyOf(inner);
        }

        @Override
        public boolean holds(ConditionContext situation) {
            return inner.stream().allMatch(condition -> condition.holds(situation));
        }

        @Override
        public Stream<StepCondition> leaves() {
            return inner.stream().flatMap(StepCondition::leaves);
        }
    }

    /** Holds while any does. */
    record AnyOf(List<StepCondition> inner) implements StepCondition {
        public AnyOf {
            inner = List.copyOf(inner);
        }

        @Override
        public boolean holds(ConditionContext situation) {
            return inner.stream().anyMatch(condition -> condition.holds(situation));
        }

        @Override
        public Stream<StepCondition> leaves() {
            return inner.stream().flatMap(StepCondition::leaves);
        }
    }
}
