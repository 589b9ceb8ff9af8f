package readback.calc.procedure;

import java.util.Optional;
import readback.calc.circuit.TubeSize;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Unit;

/** The charge of an empty system by weight: how much must go in, and whether what went in is right. */
public final class WeighIn {

    /** The usual suction line of an equipment manual, beside which a rate is computed where none is published. */
    private static final double USUAL_SUCTION_METRES = Unit.INCH.toBase(0.75);

    /** What a charging scale and the hoses leave open. Common practice, no source. */
    private static final Mass LEAST_TOLERANCE = Mass.ounces(1);

    /** Of the whole charge. Common practice, no source. */
    private static final double TOLERANCE_SHARE = 0.01;

    private WeighIn() {}

    /**
     * A line set.
     *
     * @param liquidTubeMetres outside diameter of its liquid line
     * @param lengthMetres one way
     */
    public record Line(double liquidTubeMetres, double lengthMetres) {}

    /** Where the charge for a length of line comes from. */
    public enum Basis {
        /** Figures of equipment manuals. */
        PUBLISHED,
        /** Bore and density: for sizes and refrigerants without a published figure. */
        COMPUTED
    }

    /** What is to be weighed in, or why that cannot be told. */
    public sealed interface Target {

        /** What the case of this kind makes of the target. */
        <T> T fold(Cases<T> cases);

        /** The charge, if it can be told. */
        default Optional<Charge> charge() {
            return Optional.empty();
        }

        /** What is to be made of each kind of target. */
        interface Cases<T> {

            T charge(Charge charge);

            T unknownTube(UnknownTube unknownTube);

            T nothingLeft(NothingLeft nothingLeft);
        }

        /**
         * The whole charge.
         *
         * @param adjustment for the line alone, without filter-driers; negative where the line is shorter
         */
        record Charge(Mass total, Mass adjustment, Basis basis) implements Target {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.charge(this);
            }

            @Override
            public Optional<Charge> charge() {
                return Optional.of(this);
            }
        }

        /** One of the lines has a tube of no standard size. */
        record UnknownTube() implements Target {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.unknownTube(this);
            }
        }

        /** The short line would take away more than the nameplate holds: a value is wrong. */
        record NothingLeft() implements Target {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.nothingLeft(this);
            }
        }
    }

    /** What went in against the target. */
    public enum Outcome {
        ON_TARGET,
        SHORT,
        OVER
    }

    /**
     * The charge for a line as built, where the nameplate covers another.
     *
     * @param filterDriers how many were added beyond what the nameplate covers
     */
    public static Target target(Refrigerant refrigerant, Mass nameplate, Line built, Line included, int filterDriers) {
        boolean published = LineCharge.kilogramsPerMetre(refrigerant, built.liquidTubeMetres())
                        .isPresent()
                && LineCharge.kilogramsPerMetre(refrigerant, included.liquidTubeMetres())
                        .isPresent();
        // one basis for both lines: a published figure less a computed one would be neither
        Basis basis = published ? Basis.PUBLISHED : Basis.COMPUTED;
        Optional<Double> rate = rate(refrigerant, built.liquidTubeMetres(), basis);
        Optional<Double> includedRate = rate(refrigerant, included.liquidTubeMetres(), basis);
        if (rate.isEmpty() || includedRate.isEmpty()) {
            return new Target.UnknownTube();
        }
        Mass adjustment =
                LineCharge.adjustment(rate.get(), built.lengthMetres(), includedRate.get(), included.lengthMetres());
        try {
            return new Target.Charge(LineCharge.weighIn(nameplate, adjustment, filterDriers), adjustment, basis);
        } catch (OutOfRangeException e) {
            return new Target.NothingLeft();
        }
    }

    private static Optional<Double> rate(Refrigerant refrigerant, double tubeMetres, Basis basis) {
        if (basis == Basis.PUBLISHED) {
            return LineCharge.kilogramsPerMetre(refrigerant, tubeMetres);
        }
        return TubeSize.ofOutsideDiameter(tubeMetres)
                .flatMap(liquid -> TubeSize.ofOutsideDiameter(USUAL_SUCTION_METRES)
                        .map(suction -> LineCharge.computedKilogramsPerMetre(refrigerant, liquid, suction)));
    }

    /** How far what went in may lie from the target: an ounce, or one hundredth of a larger charge. */
    public static Mass tolerance(Mass target) {
        Mass share = target.times(TOLERANCE_SHARE);
        return share.compareTo(LEAST_TOLERANCE) > 0 ? share : LEAST_TOLERANCE;
    }

    /** Compares what went in with the target; both ends of the tolerance count as on target. */
    public static Outcome judge(Mass target, Mass weighedIn) {
        double over = weighedIn.kilograms() - target.kilograms();
        double allowed = tolerance(target).kilograms() + 1e-9;
        if (Math.abs(over) <= allowed) {
            return Outcome.ON_TARGET;
        }
        return over > 0 ? Outcome.OVER : Outcome.SHORT;
    }
}
