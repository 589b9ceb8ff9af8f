package readback.calc.charge;

import java.util.List;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.Mass;
import readback.calc.quantity.TemperatureDifference;

/**
 * How much of its nameplate charge a unit lacks by two witnesses: how far it is from the target, divided by how
 * strongly units answer to charge; and what all readings together showed before anything was moved, with what was moved
 * since. Each counts by how sure it is (JCGM 100:2008, 5.1 with weights from the inverse variances). Far from the
 * target the first bends and the second leads, near it the other way round. Decision 0005.
 */
final class MissingCharge {

    /**
     * How strongly superheat and subcooling answer to a hundredth of the nameplate charge within a tenth of it: least
     * squares through the units of simulated-units.txt.
     */
    private static final TemperatureDifference SUPERHEAT_PER_PERCENT = TemperatureDifference.fahrenheit(1.1);

    private static final TemperatureDifference SUBCOOLING_PER_PERCENT = TemperatureDifference.fahrenheit(0.9);

    /** How much more or less a unit answers than they do, one standard deviation as a share. From the same units. */
    private static final double OTHERWISE_STRONG = 0.3;

    /** How far a unit that shows its target may be from its nameplate charge, one standard deviation. Likewise. */
    private static final double TARGET_MISSES = 0.02;

    private MissingCharge() {}

    /**
     * The share of the nameplate charge to add; negative for too much.
     *
     * @param steps at least one; the last one is the measurement now
     * @param uncertainty standard uncertainty of a deviation, K
     * @param level what all readings show to be in the unit now
     */
    static double share(
            ChargeMethod method, List<Correction.Step> steps, double uncertainty, Mass nameplate, ChargeLevel level) {
        double now = steps.get(steps.size() - 1).deviation().kelvins();
        double slope = slope(method, steps, uncertainty, nameplate);
        double byTarget = -now / slope;
        double otherwise = OTHERWISE_STRONG * byTarget;
        double read = uncertainty / slope;
        double targetVariance = otherwise * otherwise + read * read + TARGET_MISSES * TARGET_MISSES;
        double levelVariance = level.standardUncertainty() * level.standardUncertainty();
        return (byTarget * levelVariance + (1 - level.share()) * targetVariance) / (levelVariance + targetVariance);
    }

    /** Kelvins for a whole nameplate charge: what is usual, and what the last move did as far as it tells. */
    private static double slope(ChargeMethod method, List<Correction.Step> steps, double uncertainty, Mass nameplate) {
        double usual = method == ChargeMethod.TOTAL_SUPERHEAT
                ? -100 * SUPERHEAT_PER_PERCENT.kelvins()
                : 100 * SUBCOOLING_PER_PERCENT.kelvins();
        if (steps.size() < 2) {
            return usual;
        }
        Correction.Step last = steps.get(steps.size() - 1);
        Correction.Step before = steps.get(steps.size() - 2);
        double moved = last.movedBefore().kilograms() / nameplate.kilograms();
        double change = last.deviation().kelvins() - before.deviation().kelvins();
        double own = OTHERWISE_STRONG * usual;
        double usualWeight = 1 / (own * own);
        // the change is uncertain by √2 times a deviation
        double movedWeight = moved * moved / (2 * uncertainty * uncertainty);
        return (usual * usualWeight + change * moved / (2 * uncertainty * uncertainty)) / (usualWeight + movedWeight);
    }
}
