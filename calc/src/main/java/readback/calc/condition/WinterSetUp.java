package readback.calc.condition;

import java.util.Map;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/**
 * A restrictor on the condenser outlet that makes a cold day look warm to the refrigerant circuit: held is the
 * difference between liquid and suction pressure. California Energy Commission, RA1.2. Air-conditioners with a variable
 * metering device whose maker charges by subcooling and allows it.
 */
public final class WinterSetUp {

    /** Published differences, psi. RA1.2, from memory. */
    private static final Map<String, Band> PUBLISHED = Map.of("R-410A", Band.psi(160, 220), "R-22", Band.psi(100, 145));

    /**
     * Where there is no published difference: what lies between boiling at 40 °F and condensing at 91 to 104 °F. That
     * is what the published figures for R-410A come to. Ours.
     */
    private static final Temperature BOILING = Temperature.fahrenheit(40);

    private static final Temperature LEAST_CONDENSING = Temperature.fahrenheit(91);
    private static final Temperature MOST_CONDENSING = Temperature.fahrenheit(104);

    /** The restrictor is opened at once: 400 psig for R-410A, well below any cut-out switch. Ours. */
    private static final Temperature OPEN_AT_ONCE = Temperature.fahrenheit(117);

    private WinterSetUp() {}

    /** What to do with the restrictor. */
    public enum Outcome {
        /** The difference is too small: less air. */
        CLOSE_A_LITTLE,
        /** The difference lies in its band. */
        HOLD,
        /** The difference is too large: more air. */
        OPEN_A_LITTLE,
        /** The liquid pressure is too high, whatever the difference. */
        OPEN_AT_ONCE
    }

    /**
     * The differences that are held, both included.
     *
     * @param low pascals
     * @param high pascals
     */
    public record Band(double low, double high) {
        private static Band psi(double low, double high) {
            return new Band(Unit.PSIG.toBase(low), Unit.PSIG.toBase(high));
        }
    }

    /**
     * What came of it.
     *
     * @param difference liquid less suction pressure, pascals
     */
    public record Result(Outcome outcome, double difference, Band band) {}

    /** The band of a refrigerant: as published, else worked out. */
    public static Band band(Refrigerant refrigerant) {
        Band published = PUBLISHED.get(refrigerant.designation());
        if (published != null) {
            return published;
        }
        double boiling = refrigerant.dewPressure(BOILING).pascals();
        return new Band(
                refrigerant.bubblePressure(LEAST_CONDENSING).pascals() - boiling,
                refrigerant.bubblePressure(MOST_CONDENSING).pascals() - boiling);
    }

    /** Compares two gauge pressures that were read together. The difference counts in whole psi, as gauges show it. */
    public static Result judge(
            Refrigerant refrigerant, GaugePressure liquid, GaugePressure suction, AbsolutePressure atmosphere) {
        Band band = band(refrigerant);
        double difference = liquid.pascals() - suction.pascals();
        return new Result(outcome(refrigerant, liquid, atmosphere, whole(difference), band), difference, band);
    }

    private static Outcome outcome(
            Refrigerant refrigerant, GaugePressure liquid, AbsolutePressure atmosphere, long difference, Band band) {
        if (liquid.absoluteIn(atmosphere).compareTo(refrigerant.bubblePressure(OPEN_AT_ONCE)) > 0) {
            return Outcome.OPEN_AT_ONCE;
        }
        if (difference < whole(band.low())) {
            return Outcome.CLOSE_A_LITTLE;
        }
        return difference > whole(band.high()) ? Outcome.OPEN_A_LITTLE : Outcome.HOLD;
    }

    private static long whole(double pascals) {
        return Math.round(Unit.PSIG.fromBase(pascals));
    }
}
