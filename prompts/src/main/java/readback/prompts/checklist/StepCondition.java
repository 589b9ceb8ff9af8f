package readback.prompts.checklist;

import java.util.List;
import java.util.Set;
import readback.calc.charge.Verdict;

/** When a step or a checklist applies. */
public sealed interface StepCondition {

    /** Whether the condition holds now. */
    boolean holds(ConditionContext situation);

    /** Tells everything that the condition asks about, also inside the conditions that it is made of. */
    void mention(Mentions mentions);

    /** Gets what a condition asks about. */
    interface Mentions {

        /** The condition asks whether the slot has an answer or a value. */
        void slot(Slot slot);

        /** The condition asks whether the slot's option is one of these. */
        void options(Slot slot, Set<String> options);

        /** The condition asks whether this was found. */
        void finding(String finding);
    }

    /** Holds always. */
    record Always() implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return true;
        }

        @Override
        public void mention(Mentions mentions) {
            // asks about nothing
        }
    }

    /** Holds once the slot has an answer. */
    record Answered(Slot slot) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return situation.answered(slot);
        }

        @Override
        public void mention(Mentions mentions) {
            mentions.slot(slot);
        }
    }

    /** Holds once the slot holds a value. */
    record Measured(Slot slot) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return situation.measured(slot);
        }

        @Override
        public void mention(Mentions mentions) {
            mentions.slot(slot);
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

        @Override
        public void mention(Mentions mentions) {
            mentions.options(slot, options);
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

        @Override
        public void mention(Mentions mentions) {
            // every verdict that it can name there is
        }
    }

    /** Holds while the judgement reports the finding. */
    record Found(String finding) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return situation.found(finding);
        }

        @Override
        public void mention(Mentions mentions) {
            mentions.finding(finding);
        }
    }

    /** Holds while the inner one does not. */
    record Not(StepCondition inner) implements StepCondition {
        @Override
        public boolean holds(ConditionContext situation) {
            return !inner.holds(situation);
        }

        @Override
        public void mention(Mentions mentions) {
            inner.mention(mentions);
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
        public void mention(Mentions mentions) {
            inner.forEach(each -> each.mention(mentions));
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
        public void mention(Mentions mentions) {
            inner.forEach(each -> each.mention(mentions));
        }
    }
}
