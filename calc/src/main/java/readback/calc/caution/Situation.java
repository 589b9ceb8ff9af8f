package readback.calc.caution;

import java.util.Optional;
import java.util.Set;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * What cautions depend on. Absent means not known, and then a rule about it is silent, except that an unknown
 * refrigerant is never taken for a harmless one.
 *
 * @param activities what is being done now
 * @param superheat at the suction port, the best estimate
 * @param leastSuperheat what the suction line has to keep for the compressor
 * @param lowSide pressure there; pressures, because a saturation temperature does not exist at every one
 * @param highSide pressure there
 * @param dischargeLine temperature of the discharge line near the compressor
 * @param testPressure nitrogen in the circuit
 * @param plateLowSidePressure design pressure of the low side on the rating plate
 * @param cylinderShare filled share of the recovery cylinder's net limit, 1 = full to 80 % of its volume
 */
public record Situation(
        Optional<Refrigerant> refrigerant,
        Set<Activity> activities,
        Optional<TemperatureDifference> superheat,
        TemperatureDifference leastSuperheat,
        Optional<AbsolutePressure> lowSide,
        Optional<AbsolutePressure> highSide,
        Optional<Temperature> dischargeLine,
        Optional<GaugePressure> testPressure,
        Optional<GaugePressure> plateLowSidePressure,
        Optional<Double> cylinderShare) {

    public Situation {
        activities = Set.copyOf(activities);
    }

    /** Something is about to be done and nothing was measured yet. */
    public static Situation before(Activity activity, Optional<Refrigerant> refrigerant) {
        return new Situation(
                refrigerant,
                Set.of(activity),
                Optional.empty(),
                CautionFinder.LEAST_SAFE_SUPERHEAT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A running system was measured. */
    public static Situation running(
            Optional<Refrigerant> refrigerant,
            Optional<TemperatureDifference> superheat,
            TemperatureDifference leastSuperheat,
            Optional<AbsolutePressure> lowSide,
            Optional<AbsolutePressure> highSide,
            Optional<Temperature> dischargeLine) {
        return new Situation(
                refrigerant,
                Set.of(),
                superheat,
                leastSuperheat,
                lowSide,
                highSide,
                dischargeLine,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Nitrogen stands in the circuit. What is said before it is let in is {@link #before}'s. */
    public static Situation pressureTest(GaugePressure testPressure, Optional<GaugePressure> plateLowSidePressure) {
        return new Situation(
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                CautionFinder.LEAST_SAFE_SUPERHEAT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(testPressure),
                plateLowSidePressure,
                Optional.empty());
    }

    /** A recovery cylinder is being filled; a share of 1 is its limit. */
    public static Situation recovery(Optional<Refrigerant> refrigerant, double cylinderShare) {
        return new Situation(
                refrigerant,
                Set.of(Activity.RECOVERING),
                Optional.empty(),
                CautionFinder.LEAST_SAFE_SUPERHEAT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(cylinderShare));
    }
}
