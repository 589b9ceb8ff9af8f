package readback.calc.charge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.quantity.Mass;
import readback.calc.quantity.TemperatureDifference;

/**
 * How much refrigerant to move next, and how much in all as far as the response so far tells.
 *
 * @param basis what the amounts rest on
 * @param next the step to take now, positive to add, negative to recover, zero when nothing should be moved
 * @param total the amount still to move, signed likewise; absent without a usable response
 * @param least the end of the 95 % interval of {@code total} nearer to zero
 * @param most the far end; absent when the response is too uncertain to bound it
 * @param bound what no step may exceed rests on
 * @param response how superheat or subcooling answers to charge; absent with fewer than two measurements
 */
public record Correction(
        Basis basis,
        Mass next,
        Optional<Mass> total,
        Optional<Mass> least,
        Optional<Mass> most,
        Bound bound,
        Optional<Response> response) {

    /** First step without history far from the limits: 4 oz; near them: 2 oz. Common practice, no source. */
    private static final Mass FIRST_STEP = Mass.ounces(4);

    private static final Mass SMALL_STEP = Mass.ounces(2);

    /** No single step moves more than 8 oz, or a twentieth of the nameplate charge if that is less. Decision 0005. */
    private static final Mass LARGEST_STEP = Mass.ounces(8);

    private static final double LARGEST_SHARE = 0.05;

    /**
     * A charge that was moved into its tolerance is brought nearer to the target while it is still this share of the
     * tolerance away, once. Ours; decision 0005.
     */
    private static final double TRIM_BEYOND = 0.5;

    /** The same where the level tells too. Ours; decision 0005. */
    private static final double TRIM_BEYOND_WITH_LEVEL = 0.25;

    /** Less cannot be metered with a charging scale; common practice, no source. */
    private static final Mass LEAST_MOVE = Mass.ounces(0.5);

    /** Less of the nameplate charge is not worth a quarter of an hour more. Ours; decision 0005. */
    private static final double LEAST_TRIM_SHARE = 0.01;

    /** 95 % two-sided for a normal distribution; JCGM 100:2008, table G.1. */
    private static final double COVERAGE = 1.96;

    /** What a correction rests on. */
    public enum Basis {
        /** The measured value lies within its limits. */
        NOTHING_TO_CORRECT,
        /** What was moved brought the value just within its limits; this much more brings it to the target. */
        TRIM,
        /** The system is charged by the scale alone; nothing is added to what is in it or taken from it. */
        BY_WEIGHT,
        /** No history: a plain careful step. */
        FIRST_STEP,
        /** The response so far. */
        RESPONSE,
        /** Refrigerant was moved, but the response does not stand out from the uncertainty. */
        NO_CLEAR_RESPONSE,
        /** The value moved the wrong way: the charge is not what is wrong. */
        CONTRARY_RESPONSE
    }

    /** Which charge a step is a small share of. */
    public enum Bound {
        /** That on the rating plate. */
        NAMEPLATE,
        /** The plate was not read: the smallest charge that is judged by gauges at all. */
        SMALLEST_SYSTEM
    }

    /**
     * Slope of the measured value against the charge.
     *
     * @param perKilogram kelvins for each kilogram added, with the sign as measured
     * @param standardUncertainty of the slope
     */
    public record Response(double perKilogram, double standardUncertainty) {

        /** Fahrenheit degrees for each ounce added. */
        public double fahrenheitPerOunce() {
            return TemperatureDifference.kelvins(perKilogram * Mass.ounces(1).kilograms())
                    .fahrenheit();
        }
    }

    /**
     * A measurement in the sequence.
     *
     * @param movedBefore added (positive) or recovered (negative) since the measurement before; ignored for the first
     * @param deviation actual minus target, so that weather that moved the target does not count as response
     */
    public record Step(Mass movedBefore, TemperatureDifference deviation) {

        /** The measurement that a judgement stands for; absent when it compares nothing. */
        public static Optional<Step> of(Mass movedBefore, Judgement judgement) {
            return judgement
                    .judged()
                    .flatMap(actual -> judgement
                            .target()
                            .map(target -> new Step(movedBefore, actual.value().minus(target.value()))));
        }
    }

    /**
     * The correction after a sequence of measurements that ended with this judgement; absent when its verdict is not a
     * comparison, and then nothing should be moved.
     *
     * @param steps in the order they were made, the last one from the judgement
     * @param nameplate bounds the step; where it is absent the system may be as small as gauges can judge
     * @param level what all readings show to be in the system now; absent where nothing but the deviation is known
     * @param stepShare what a careful step is of the usual one, above 0, at most 1
     */
    public static Optional<Correction> after(
            List<Step> steps,
            Judgement latest,
            Optional<Mass> nameplate,
            Optional<ChargeLevel> level,
            double stepShare) {
        return latest.verdict()
                .comparison()
                .flatMap(compared -> latest.judged()
                        .map(actual -> compared.kind() == Verdict.Kind.WEIGH_IN
                                ? without(Basis.BY_WEIGHT, Mass.NONE, nameplate, Optional.empty())
                                : after(
                                        latest.method(),
                                        steps,
                                        actual.standardUncertainty(),
                                        compared.deviation().limits(),
                                        nameplate,
                                        level,
                                        stepShare)));
    }

    /**
     * The correction after a sequence of measurements, where nothing else tells by how much the charge is off.
     *
     * @param steps in the order they were made, at least one
     * @param standardUncertainty of each deviation
     * @param limits within which the deviation must end
     * @param nameplate bounds the step; where it is absent the system may be as small as gauges can judge
     * @throws IllegalArgumentException without a step
     */
    public static Correction after(
            ChargeMethod method,
            List<Step> steps,
            TemperatureDifference standardUncertainty,
            Band limits,
            Optional<Mass> nameplate) {
        return after(method, steps, standardUncertainty, limits, nameplate, Optional.empty(), 1);
    }

    /**
     * The correction after a sequence of measurements.
     *
     * @param steps in the order they were made, at least one
     * @param standardUncertainty of each deviation
     * @param limits within which the deviation must end
     * @param nameplate bounds the step; where it is absent the system may be as small as gauges can judge
     * @param level what all readings show to be in the system now; absent where nothing but the deviation is known
     * @param stepShare what a careful step is of the usual one, above 0, at most 1
     * @throws IllegalArgumentException without a step
     */
    public static Correction after(
            ChargeMethod method,
            List<Step> steps,
            TemperatureDifference standardUncertainty,
            Band limits,
            Optional<Mass> nameplate,
            Optional<ChargeLevel> level,
            double stepShare) {
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a correction needs a measurement");
        }
        // More charge lowers superheat and raises subcooling.
        double expectedSign = method == ChargeMethod.TOTAL_SUPERHEAT ? -1 : 1;
        TemperatureDifference now = steps.get(steps.size() - 1).deviation();
        Optional<Response> response = response(steps, standardUncertainty.kelvins());
        OptionalDouble missing = nameplate.isPresent() && level.isPresent()
                ? OptionalDouble.of(
                        MissingCharge.share(method, steps, standardUncertainty.kelvins(), nameplate.get(), level.get()))
                : OptionalDouble.empty();
        double direction = -Math.signum(now.kelvins()) * expectedSign;
        Optional<Mass> off = missing.isPresent()
                ? nameplate.map(charge -> charge.times(Math.max(0, missing.getAsDouble() * direction)))
                : Optional.empty();
        if (inside(now, standardUncertainty, limits)) {
            Mass trim = arrived(steps, standardUncertainty, limits) && !contrary(response, expectedSign)
                    ? bounded(trim(now, expectedSign, response, off), nameplate, stepShare)
                    : Mass.NONE;
            Mass least = larger(LEAST_MOVE, off.isPresent() ? nameplate.get().times(LEAST_TRIM_SHARE) : Mass.NONE);
            double beyond = off.isPresent() ? TRIM_BEYOND_WITH_LEVEL : TRIM_BEYOND;
            return trim.compareTo(least) < 0 || near(now, limits, beyond)
                    ? without(Basis.NOTHING_TO_CORRECT, Mass.NONE, nameplate, response)
                    : without(Basis.TRIM, trim.times(direction), nameplate, response);
        }
        Mass plain = bounded(
                        off.map(each -> larger(each, LEAST_MOVE))
                                .orElseGet(() -> plainStep(now, limits).times(stepShare)),
                        nameplate,
                        stepShare)
                .times(direction);
        if (response.isEmpty()) {
            return without(Basis.FIRST_STEP, plain, nameplate, response);
        }
        double slope = response.get().perKilogram() * expectedSign;
        double uncertainty = response.get().standardUncertainty();
        if (contrary(response, expectedSign)) {
            return without(Basis.CONTRARY_RESPONSE, Mass.NONE, nameplate, response);
        }
        if (slope <= COVERAGE * uncertainty) {
            return without(Basis.NO_CLEAR_RESPONSE, plain, nameplate, response);
        }
        double wanted = Math.abs(now.kelvins());
        double steepest = slope + COVERAGE * uncertainty;
        double flattest = slope - COVERAGE * uncertainty;
        double error = COVERAGE * standardUncertainty.kelvins();
        // Where nothing else is known the step stops at the target even with the steepest believable response; what is
        // known otherwise never takes it beyond the target with the flattest.
        Mass step = off.map(each -> smaller(each, Mass.kilograms(wanted / flattest)))
                .orElseGet(() -> Mass.kilograms(wanted / steepest));
        Mass next = bounded(larger(step, LEAST_MOVE), nameplate, stepShare).times(direction);
        return new Correction(
                Basis.RESPONSE,
                next,
                Optional.of(Mass.kilograms(wanted / slope).times(direction)),
                Optional.of(
                        Mass.kilograms(Math.max(0, wanted - error) / steepest).times(direction)),
                Optional.of(Mass.kilograms((wanted + error) / flattest).times(direction)),
                bound(nameplate),
                response);
    }

    /** Whether the value surely moves the wrong way. */
    private static boolean contrary(Optional<Response> response, double expectedSign) {
        return response.filter(each -> each.perKilogram() * expectedSign < -COVERAGE * each.standardUncertainty())
                .isPresent();
    }

    /** Whether the last move brought the value within its limits, so that it is trimmed once at most. */
    private static boolean arrived(List<Step> steps, TemperatureDifference standardUncertainty, Band limits) {
        return steps.size() > 1 && !inside(steps.get(steps.size() - 2).deviation(), standardUncertainty, limits);
    }

    /**
     * What brings a value to the target: by the response so far where that is clear, or less where less is off; without
     * a clear response what is off, none where that is not known.
     */
    private static Mass trim(
            TemperatureDifference now, double expectedSign, Optional<Response> response, Optional<Mass> off) {
        Optional<Mass> answered = response.filter(
                        each -> each.perKilogram() * expectedSign > COVERAGE * each.standardUncertainty())
                .map(each -> Mass.kilograms(Math.abs(now.kelvins()) / Math.abs(each.perKilogram())));
        return answered.map(most -> smaller(most, off.orElse(most)))
                .or(() -> off)
                .orElse(Mass.NONE);
    }

    /** Whether a value is near enough to the target for no trim. */
    private static boolean near(TemperatureDifference now, Band limits, double beyond) {
        return Math.abs(now.kelvins()) <= beyond * Math.abs(limit(now, limits).kelvins());
    }

    private static boolean inside(
            TemperatureDifference deviation, TemperatureDifference standardUncertainty, Band limits) {
        return Comparison.of(deviation, standardUncertainty, limits).position() == Comparison.Position.INSIDE;
    }

    private static Correction without(Basis basis, Mass next, Optional<Mass> nameplate, Optional<Response> response) {
        return new Correction(
                basis, next, Optional.empty(), Optional.empty(), Optional.empty(), bound(nameplate), response);
    }

    private static Bound bound(Optional<Mass> nameplate) {
        return nameplate.isPresent() ? Bound.NAMEPLATE : Bound.SMALLEST_SYSTEM;
    }

    /** Least squares through all measurements; absent until refrigerant was moved between two of them. */
    private static Optional<Response> response(List<Step> steps, double uncertainty) {
        double[] charge = new double[steps.size()];
        double meanCharge = 0;
        double meanDeviation = 0;
        for (int i = 0; i < charge.length; i++) {
            charge[i] = i == 0 ? 0 : charge[i - 1] + steps.get(i).movedBefore().kilograms();
            meanCharge += charge[i] / charge.length;
            meanDeviation += steps.get(i).deviation().kelvins() / charge.length;
        }
        double squares = 0;
        double products = 0;
        for (int i = 0; i < charge.length; i++) {
            squares += (charge[i] - meanCharge) * (charge[i] - meanCharge);
            products += (charge[i] - meanCharge) * (steps.get(i).deviation().kelvins() - meanDeviation);
        }
        // a gram: less was not moved on purpose
        return squares < 1e-6
                ? Optional.empty()
                : Optional.of(new Response(products / squares, uncertainty / Math.sqrt(squares)));
    }

    /** A full step while the deviation is more than twice what is allowed, else a small one. */
    private static Mass plainStep(TemperatureDifference deviation, Band limits) {
        return Math.abs(deviation.kelvins())
                        > 2 * Math.abs(limit(deviation, limits).kelvins())
                ? FIRST_STEP
                : SMALL_STEP;
    }

    /** The limit on the side of the deviation. */
    private static TemperatureDifference limit(TemperatureDifference deviation, Band limits) {
        return deviation.kelvins() < 0 ? limits.low() : limits.high();
    }

    private static Mass larger(Mass one, Mass other) {
        return one.kilograms() < other.kilograms() ? other : one;
    }

    private static Mass smaller(Mass one, Mass other) {
        return one.kilograms() < other.kilograms() ? one : other;
    }

    private static Mass bounded(Mass step, Optional<Mass> nameplate, double stepShare) {
        double most = stepShare
                * Math.min(
                        LARGEST_STEP.kilograms(),
                        nameplate.orElse(ChargeByWeight.LEAST_BY_GAUGES).kilograms() * LARGEST_SHARE);
        return Mass.kilograms(Math.min(step.kilograms(), most));
    }
}
