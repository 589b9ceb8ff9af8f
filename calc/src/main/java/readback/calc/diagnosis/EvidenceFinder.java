package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.charge.Judgement;
import readback.calc.condition.TemperatureSplit;
import readback.calc.fluid.Side;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.GaugeAccuracy;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.Target;
import readback.calc.targets.TargetSource;

/** How far readings are from what a sound unit would show, and how sure that is. */
final class EvidenceFinder {

    /** 8 to 14 °F where no plate is left, any of them as likely: JCGM 100:2008, 4.3.7. K² */
    private static final double COMMON_SUBCOOLING_VARIANCE = 0.93;

    /** Share of the pressure over which the slope of saturation is taken. */
    private static final double STEP = 1e-3;

    private final SystemUnderTest system;
    private final Readings sound;
    private final Judgement judgement;
    private final AirAround air;
    private final SoundUnit unit;
    private final List<Evidence> evidence = new ArrayList<>(6);
    private final double[][] covariance = new double[Symptom.values().length][Symptom.values().length];

    private EvidenceFinder(SystemUnderTest system, Readings sound, Judgement judgement, SoundUnit unit) {
        this.system = system;
        this.sound = sound;
        this.judgement = judgement;
        this.air = AirAround.of(sound, system.accuracy());
        this.unit = unit;
    }

    /** What the readings tell, leaving out what is contradictory or has nothing to be compared with. */
    static Observed observed(SystemUnderTest system, Readings readings, Judgement judgement) {
        SoundUnit sound = Population.of(judgement.method()).sound();
        return observed(
                system,
                readings,
                judgement,
                system.efficiency().map(sound::ofEfficiency).orElse(sound));
    }

    /** The same against another idea of a sound unit. */
    static Observed observed(SystemUnderTest system, Readings readings, Judgement judgement, SoundUnit unit) {
        Readings sound = readings.without(judgement.contradictions().stream()
                .flatMap(contradiction -> contradiction.between().stream())
                .toList());
        return new EvidenceFinder(system, sound, judgement, unit).observed();
    }

    private Observed observed() {
        weather();
        instruments();
        if (sound.has(Quantity.SUCTION_PRESSURE)) {
            judgement.evaporatingSaturation().ifPresent(coil -> add(Symptom.EVAPORATING_TEMPERATURE, coil.celsius()));
        }
        boolean bySuperheat = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT;
        judgement
                .superheat()
                .ifPresent(actual -> judged(Symptom.SUPERHEAT, actual.value().kelvins(), bySuperheat));
        Optional<Temperature> condensing =
                sound.has(Quantity.LIQUID_PRESSURE) ? judgement.condensingSaturation() : Optional.empty();
        condensing.ifPresent(saturation -> sound.temperature(Quantity.OUTDOOR_TEMPERATURE)
                .ifPresent(outdoor -> add(
                        Symptom.CONDENSING_TEMPERATURE,
                        saturation.minus(outdoor).kelvins())));
        judgement
                .subcooling()
                .ifPresent(actual -> judged(Symptom.SUBCOOLING, actual.value().kelvins(), !bySuperheat));
        condensing.ifPresent(saturation -> sound.temperature(Quantity.DISCHARGE_LINE_TEMPERATURE)
                .ifPresent(discharge -> add(
                        Symptom.DISCHARGE_TEMPERATURE,
                        discharge.minus(saturation).kelvins())));
        TemperatureSplit.deviation(sound).ifPresent(deviation -> add(Symptom.AIR_SPLIT, deviation.kelvins()));
        return new Observed(evidence, covariance);
    }

    /** Against the target where the charge is judged by it, else against the sound unit. */
    private void judged(Symptom symptom, double actual, boolean byTarget) {
        if (!byTarget) {
            add(symptom, actual);
            return;
        }
        judgement.target().ifPresent(target -> {
            int at = Observed.index(symptom);
            covariance[at][at] += variance(target);
            add(symptom, actual - target.value().kelvins());
        });
    }

    private static double variance(Target target) {
        double u = target.standardUncertainty().kelvins();
        return u * u + (target.source() == TargetSource.COMMON_PRACTICE ? COMMON_SUBCOOLING_VARIANCE : 0);
    }

    private void add(Symptom symptom, double kelvins) {
        int at = Observed.index(symptom);
        evidence.add(new Evidence(
                symptom,
                TemperatureDifference.kelvins(kelvins - unit.expected(symptom, air.mean())),
                TemperatureDifference.kelvins(Math.sqrt(covariance[at][at]))));
    }

    /** What nobody read of the air, and the error of what was read, moves all expectations together. */
    private void weather() {
        Symptom[] symptoms = Symptom.values();
        double[][] slopes = new double[symptoms.length][];
        for (int i = 0; i < symptoms.length; i++) {
            slopes[i] = unit.slopes(symptoms[i], air.mean());
        }
        // what is counted from the outdoor air is off by its probe too
        slopes[Observed.index(Symptom.CONDENSING_TEMPERATURE)][0] += 1;
        for (int i = 0; i < symptoms.length; i++) {
            for (int j = 0; j < symptoms.length; j++) {
                for (int k = 0; k < AirAround.SIZE; k++) {
                    for (int l = 0; l < AirAround.SIZE; l++) {
                        covariance[i][j] += slopes[i][k] * air.covariance()[k][l] * slopes[j][l];
                    }
                }
            }
        }
    }

    private void instruments() {
        InstrumentAccuracy accuracy = system.accuracy();
        double suction = gauge(Quantity.SUCTION_PRESSURE, Side.DEW, accuracy.suctionGauge());
        double liquid = gauge(Quantity.LIQUID_PRESSURE, Side.BUBBLE, accuracy.liquidGauge());
        double line = accuracy.lineProbe().kelvins() * accuracy.lineProbe().kelvins() / 3;
        double dryBulbs =
                2 * accuracy.airProbe().kelvins() * accuracy.airProbe().kelvins() / 3;
        add(Symptom.EVAPORATING_TEMPERATURE, Symptom.EVAPORATING_TEMPERATURE, suction);
        add(Symptom.EVAPORATING_TEMPERATURE, Symptom.SUPERHEAT, -suction);
        add(Symptom.SUPERHEAT, Symptom.SUPERHEAT, suction + line);
        add(Symptom.CONDENSING_TEMPERATURE, Symptom.CONDENSING_TEMPERATURE, liquid);
        add(Symptom.CONDENSING_TEMPERATURE, Symptom.SUBCOOLING, liquid);
        add(Symptom.CONDENSING_TEMPERATURE, Symptom.DISCHARGE_TEMPERATURE, -liquid);
        add(Symptom.SUBCOOLING, Symptom.SUBCOOLING, liquid + line);
        add(Symptom.SUBCOOLING, Symptom.DISCHARGE_TEMPERATURE, -liquid);
        add(Symptom.DISCHARGE_TEMPERATURE, Symptom.DISCHARGE_TEMPERATURE, liquid + line);
        add(Symptom.AIR_SPLIT, Symptom.AIR_SPLIT, dryBulbs);
    }

    private void add(Symptom one, Symptom other, double kelvinsSquared) {
        int i = Observed.index(one);
        int j = Observed.index(other);
        covariance[i][j] += kelvinsSquared;
        if (i != j) {
            covariance[j][i] += kelvinsSquared;
        }
    }

    /** Variance of a saturation temperature by the gauge's limit, K²; by a usual pressure where none was read. */
    private double gauge(Quantity quantity, Side side, GaugeAccuracy accuracy) {
        AbsolutePressure pressure = sound.gaugePressure(quantity)
                .map(gauge -> gauge.absoluteIn(system.atmosphere()))
                .filter(read -> read.pascals() * (1 - STEP)
                                > system.refrigerant().lowestPressure(side).pascals()
                        && read.compareTo(system.refrigerant().highestPressure(side)) < 0)
                .orElseGet(() -> usual(side));
        AbsolutePressure near = AbsolutePressure.pascals(pressure.pascals() * (1 - STEP));
        double slope = system.refrigerant()
                        .saturationTemperature(side, pressure)
                        .minus(system.refrigerant().saturationTemperature(side, near))
                        .kelvins()
                / (pressure.pascals() - near.pascals());
        GaugePressure shown =
                GaugePressure.pascals(pressure.pascals() - system.atmosphere().pascals());
        double kelvins = slope * accuracy.at(shown).pascals();
        return kelvins * kelvins / 3;
    }

    /** 40 °F and 110 °F, or what the refrigerant has. */
    private AbsolutePressure usual(Side side) {
        Temperature highest = system.refrigerant().highestTemperature();
        Temperature usual = Temperature.fahrenheit(side == Side.DEW ? 40 : 110);
        return system.refrigerant().saturationPressure(side, usual.compareTo(highest) < 0 ? usual : highest);
    }
}
