package readback.calc.charge;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.condition.FailedCondition;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Undecided;
import readback.calc.plausibility.Contradiction;
import readback.calc.quantity.Quantity;

/** What follows from the readings for the charge. */
public sealed interface Verdict {

    /** The verdict in one word. */
    Kind kind();

    /** Whether the readings leave it open on which side of a limit the truth lies. */
    default boolean borderline() {
        return false;
    }

    /** What the case of this kind makes of the verdict. */
    <T> T fold(Cases<T> cases);

    /** The comparison with the target, if one was made. */
    default Optional<Compared> comparison() {
        return Optional.empty();
    }

    /** What is to be made of each kind of verdict. */
    interface Cases<T> {

        T compared(Compared compared);

        T noValidTest(NoValidTest noValidTest);

        T doNotCharge(DoNotCharge doNotCharge);

        T incomplete(Incomplete incomplete);
    }

    /** Verdicts in one word each. */
    enum Kind {
        IN_TOLERANCE,
        ADD,
        RECOVER,
        /** The charge is off, and it is put right by the scale alone. */
        WEIGH_IN,
        NO_VALID_TEST,
        DO_NOT_CHARGE,
        INCOMPLETE
    }

    /**
     * The charge was compared with its target.
     *
     * @param kind in tolerance, add, recover or weigh in
     * @param deviation actual minus target superheat or subcooling, against the limits
     * @param undecided what leaves it open on which side of a limit the truth lies
     */
    record Compared(Kind kind, Comparison deviation, Optional<Undecided> undecided) implements Verdict {
        @Override
        public boolean borderline() {
            return deviation.borderline();
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.compared(this);
        }

        @Override
        public Optional<Compared> comparison() {
            return Optional.of(this);
        }
    }

    /**
     * Nothing can be said about the charge this way.
     *
     * @param conditions that fail and forbid the test
     * @param contradictions among the readings that the test needs
     */
    record NoValidTest(List<FailedCondition> conditions, List<Contradiction> contradictions) implements Verdict {
        public NoValidTest {
            conditions = List.copyOf(conditions);
            contradictions = List.copyOf(contradictions);
        }

        @Override
        public Kind kind() {
            return Kind.NO_VALID_TEST;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.noValidTest(this);
        }
    }

    /** Something else is wrong and comes first; the readings say nothing about the charge until it is put right. */
    record DoNotCharge(Set<Reason> reasons) implements Verdict {

        /** What comes first. */
        public enum Reason {
            AIRFLOW_TOO_LOW,
            /** Superheat is too small to keep liquid from the compressor. */
            LIQUID_AT_COMPRESSOR,
            /** A fault that is not the charge explains the readings best. */
            OTHER_FAULT_LEADS,
            /** The value is off, but the readings do not say that it is the charge. */
            CAUSE_OPEN,
            /** What was moved before changed the value the wrong way. */
            CONTRARY_RESPONSE
        }

        public DoNotCharge {
            reasons = Set.copyOf(reasons);
        }

        @Override
        public Kind kind() {
            return Kind.DO_NOT_CHARGE;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.doNotCharge(this);
        }
    }

    /** Readings are missing. */
    record Incomplete(Set<Quantity> missing) implements Verdict {
        public Incomplete {
            missing = Set.copyOf(missing);
        }

        @Override
        public Kind kind() {
            return Kind.INCOMPLETE;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.incomplete(this);
        }
    }
}
