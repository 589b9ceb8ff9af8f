package readback.calc.charge;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.condition.FailedCondition;
import readback.calc.measurement.Comparison;
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
    }

    /** Something else is wrong and comes first; the readings say nothing about the charge until it is put right. */
    record DoNotCharge(Set<Reason> reasons) implements Verdict {

        /** What comes first. */
        public enum Reason {
            AIRFLOW_TOO_LOW,
            /** Superheat is too small to keep liquid from the compressor. */
            LIQUID_AT_COMPRESSOR,
            /** A fault that is not the charge explains the readings best. */
            OTHER_FAULT_LEADS
        }

        public DoNotCharge {
            reasons = Set.copyOf(reasons);
        }

        @Override
        public Kind kind() {
            return Kind.DO_NOT_CHARGE;
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
    }
}
