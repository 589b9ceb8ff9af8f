package readback.calc.procedure;

import java.util.Optional;
import java.util.stream.Stream;
import readback.calc.circuit.TubeSize;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

/** The charge of an empty system by weight: how much must go in, and whether what went in is right. */
public final class WeighIn {

    /** The suction line of an equipment manual, beside which a rate is computed where none is known. */
    private static final TubeSize USUAL_SUCTION = TubeSize.THREE_QUARTERS;

    /** The sizes next to the usual one: what not knowing the suction line may be off by. */
    private static final TubeSize THINNER_SUCTION = TubeSize.FIVE_EIGHTHS;

    private static final TubeSize THICKER_SUCTION = TubeSize.SEVEN_EIGHTHS;

    /** What a charging scale and the hoses leave open. Common practice, no source. */
    private static final Mass LEAST_TOLERANCE = Mass.ounces(1);

    /** Of the whole charge. Common practice, no source. */
    private static final double TOLERANCE_SHARE = 0.01;

    private WeighIn() {}

    /**
     * A line set.
     *
     * @param liquidTubeMetres outside diameter of its liquid line
     * @param suctionTubeMetres outside diameter of its suction line; published figures count no other than the usual
     * @param lengthMetres one way
     */
    public record Line(double liquidTubeMetres, double suctionTubeMetres, double lengthMetres) {

        /** With a suction line of the usual size. */
        public Line(double liquidTubeMetres, double lengthMetres) {
            this(liquidTubeMetres, USUAL_SUCTION.outsideDiameter(), lengthMetres);
        }
    }

    /**
     * Filter-driers added beyond what the nameplate covers.
     *
     * @param each what one of them holds
     */
    public record Driers(int count, Mass each) {

        public static final Driers NONE = new Driers(0, LineCharge.FILTER_DRIER);

        /** So many by the figure of {@link LineCharge#FILTER_DRIER}. */
        public static Driers usual(int count) {
            return new Driers(count, LineCharge.FILTER_DRIER);
        }

        /** What they hold together. */
        public Mass charge() {
            return each.times(count);
        }
    }

    /** Where the charge for a length of line comes from. */
    public enum Basis {
        /** Stated by the maker of this unit. */
        MAKER,
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
     * @param makersRate kilograms a metre of the line as built, as the maker states it: it comes before all others
     */
    public static Target target(
            Refrigerant refrigerant,
            Mass nameplate,
            Line built,
            Line included,
            Driers driers,
            Optional<Double> makersRate) {
        Basis basis = basis(refrigerant, built, included, makersRate);
        Optional<Double> rate = basis == Basis.MAKER ? makersRate : rate(refrigerant, built, basis);
        Optional<Double> includedRate = basis == Basis.MAKER
                ? makersRate.flatMap(each -> scaled(each, refrigerant, built, included))
                : rate(refrigerant, included, basis);
        if (rate.isEmpty() || includedRate.isEmpty()) {
            return new Target.UnknownTube();
        }
        Mass adjustment =
                LineCharge.adjustment(rate.get(), built.lengthMetres(), includedRate.get(), included.lengthMetres());
        try {
            return new Target.Charge(LineCharge.weighIn(nameplate, adjustment, driers.charge()), adjustment, basis);
        } catch (OutOfRangeException e) {
            return new Target.NothingLeft();
        }
    }

    /** What the charge for the line rests on: one basis for both lines, for a difference of two would be neither. */
    public static Basis basis(Refrigerant refrigerant, Line built, Line included, Optional<Double> makersRate) {
        if (makersRate.isPresent()) {
            return Basis.MAKER;
        }
        return Stream.of(built, included)
                        .allMatch(line -> LineCharge.kilogramsPerMetre(refrigerant, line.liquidTubeMetres())
                                .isPresent())
                ? Basis.PUBLISHED
                : Basis.COMPUTED;
    }

    /**
     * Whether the suction line changes a computed charge by more than the scale leaves open, when it is one size away
     * from the usual one. It cannot where the liquid tube is of no standard size, for then nothing is computed.
     */
    public static boolean suctionMatters(Refrigerant refrigerant, Mass nameplate, Line line) {
        return TubeSize.ofOutsideDiameter(line.liquidTubeMetres())
                .map(liquid -> LineCharge.computedKilogramsPerMetre(refrigerant, liquid, THICKER_SUCTION)
                        - LineCharge.computedKilogramsPerMetre(refrigerant, liquid, THINNER_SUCTION))
                .filter(spread -> Mass.kilograms(spread * line.lengthMetres()).compareTo(tolerance(nameplate)) > 0)
                .isPresent();
    }

    private static Optional<Double> rate(Refrigerant refrigerant, Line line, Basis basis) {
        if (basis == Basis.PUBLISHED) {
            return LineCharge.kilogramsPerMetre(refrigerant, line.liquidTubeMetres());
        }
        return TubeSize.ofOutsideDiameter(line.liquidTubeMetres())
                .flatMap(liquid -> TubeSize.ofOutsideDiameter(line.suctionTubeMetres())
                        .map(suction -> LineCharge.computedKilogramsPerMetre(refrigerant, liquid, suction)));
    }

    /** The maker's figure for the line as built, brought to the included line by what the bores of both hold. */
    private static Optional<Double> scaled(double makersRate, Refrigerant refrigerant, Line built, Line included) {
        if (included.liquidTubeMetres() == built.liquidTubeMetres() || included.lengthMetres() == 0) {
            return Optional.of(makersRate);
        }
        return rate(refrigerant, built, Basis.COMPUTED)
                .flatMap(asBuilt ->
                        rate(refrigerant, included, Basis.COMPUTED).map(covered -> makersRate * covered / asBuilt));
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
