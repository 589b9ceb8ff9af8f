package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.charge.Judgement;
import readback.calc.condition.TemperatureSplit;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.Target;

/**
 * What a sound system would show, and how far the readings are from it. Spreads are standard deviations; where a usual
 * range is known, it is taken for four of them. They are wide enough to contain the error of an ordinary gauge.
 */
final class EvidenceFinder {

    /** Evaporating 35 °F below return air at 400 cfm a ton, 40 at 350: service training texts. */
    private static final Baseline COIL_BELOW_RETURN = Baseline.fahrenheit(-35, 3.5);

    /**
     * Evaporating at 36 to 48 °F, stated from freezing, when the return air is not known. Common practice, no source.
     */
    private static final Baseline COIL_ABOVE_FREEZING = Baseline.fahrenheit(10, 3);

    /** Condensing 12 to 30 °F over outdoor air, old units more, new ones less. Common practice, no source. */
    private static final Baseline CONDENSING_OVER_OUTDOOR = Baseline.fahrenheit(21, 4.5);

    /** 6 to 16 °F where no plate value is judged. Common practice, no source. */
    private static final Baseline USUAL_SUBCOOLING = Baseline.fahrenheit(11, 2.5);

    /** An expansion valve is set for 8 to 12 °F, and 4 to 25 passes. Common practice; RA3.2.2.6.2, step 9. */
    private static final Baseline VALVE_SUPERHEAT = Baseline.fahrenheit(10, 3);

    /** Discharge line 36 to 84 °F above condensing. Common practice, no source. */
    private static final Baseline DISCHARGE_OVER_CONDENSING = Baseline.fahrenheit(60, 12);

    /** Half the tolerance of ±3 °F of subcooling and split. California Energy Commission RA3.2.2.6.2 and RA3.2.2.7. */
    private static final TemperatureDifference HALF_TOLERANCE = TemperatureDifference.fahrenheit(1.5);

    private static final Temperature FREEZING = Temperature.fahrenheit(32);
    private static final TemperatureDifference NONE = TemperatureDifference.kelvins(0);

    private EvidenceFinder() {}

    /** The evidence in the readings, leaving out what is contradictory or has nothing to be compared with. */
    static List<Evidence> evidence(SystemUnderTest system, Readings readings, Judgement judgement) {
        Readings sound = readings.without(judgement.contradictions().stream()
                .flatMap(contradiction -> contradiction.between().stream())
                .toList());
        List<Evidence> evidence = new ArrayList<>(6);
        if (sound.has(Quantity.SUCTION_PRESSURE)) {
            judgement.evaporatingSaturation().ifPresent(coil -> evidence.add(evaporating(sound, coil)));
        }
        boolean bySuperheat = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT;
        Optional<Baseline> superheat =
                bySuperheat ? judgement.target().map(EvidenceFinder::atTarget) : Optional.of(VALVE_SUPERHEAT);
        Optional<Baseline> subcooling =
                bySuperheat ? Optional.of(USUAL_SUBCOOLING) : judgement.target().map(EvidenceFinder::atTarget);
        superheat.ifPresent(expected -> judgement
                .superheat()
                .ifPresent(actual -> evidence.add(
                        expected.compare(Symptom.SUPERHEAT, actual.value(), actual.standardUncertainty()))));
        subcooling.ifPresent(expected -> judgement
                .subcooling()
                .ifPresent(actual -> evidence.add(
                        expected.compare(Symptom.SUBCOOLING, actual.value(), actual.standardUncertainty()))));
        if (sound.has(Quantity.LIQUID_PRESSURE)) {
            judgement.condensingSaturation().ifPresent(condensing -> highSide(sound, condensing, evidence));
        }
        split(system, sound).ifPresent(evidence::add);
        return evidence;
    }

    /** A plate value is exact, but a sound system keeps it only within its tolerance. */
    private static Baseline atTarget(Target target) {
        return new Baseline(
                target.value(),
                target.standardUncertainty().compareTo(HALF_TOLERANCE) > 0
                        ? target.standardUncertainty()
                        : HALF_TOLERANCE);
    }

    private static Evidence evaporating(Readings readings, Temperature coil) {
        Optional<Temperature> air = readings.temperature(Quantity.RETURN_DRY_BULB);
        return air.isPresent()
                ? COIL_BELOW_RETURN.compare(Symptom.EVAPORATING_TEMPERATURE, coil.minus(air.get()), NONE)
                : COIL_ABOVE_FREEZING.compare(Symptom.EVAPORATING_TEMPERATURE, coil.minus(FREEZING), NONE);
    }

    private static void highSide(Readings readings, Temperature condensing, List<Evidence> evidence) {
        readings.temperature(Quantity.OUTDOOR_TEMPERATURE)
                .ifPresent(outdoor -> evidence.add(CONDENSING_OVER_OUTDOOR.compare(
                        Symptom.CONDENSING_TEMPERATURE, condensing.minus(outdoor), NONE)));
        readings.temperature(Quantity.DISCHARGE_LINE_TEMPERATURE)
                .ifPresent(discharge -> evidence.add(DISCHARGE_OVER_CONDENSING.compare(
                        Symptom.DISCHARGE_TEMPERATURE, discharge.minus(condensing), NONE)));
    }

    private static Optional<Evidence> split(SystemUnderTest system, Readings readings) {
        // two dry bulbs, each off by anything up to its limit: JCGM 100:2008, 4.3.7
        TemperatureDifference uncertainty =
                TemperatureDifference.kelvins(system.accuracy().airProbe().kelvins() * Math.sqrt(2.0 / 3));
        return TemperatureSplit.deviation(readings)
                .map(deviation ->
                        new Baseline(NONE, HALF_TOLERANCE).compare(Symptom.AIR_SPLIT, deviation, uncertainty));
    }
}
