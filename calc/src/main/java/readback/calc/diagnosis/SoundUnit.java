package readback.calc.diagnosis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import readback.calc.measurement.Band;
import readback.calc.measurement.Efficiency;

/**
 * What a sound unit shows in a weather: quadratics in outdoor air, return wet bulb and return dry bulb, fitted to
 * simulated units. Where the judgement has a target, the symptom is held against that, and the quadratic is zero.
 */
final class SoundUnit {

    /** Constant, three slopes, six second powers. */
    static final int TERMS = 10;

    /** Outdoor 85, wet bulb 65, dry bulb 77 °F, in °C: the middle of the weather fitted in. */
    private static final double[] MIDDLE = {29.4, 18.3, 25};

    /**
     * How differently sound units condense in the same weather, K²: a standard deviation of 1.9 K among the simulated
     * ones, and 1 K for what real ones differ besides. Ours.
     */
    private static final double CONDENSING_VARIANCE = 1.9 * 1.9 + 1;

    private final Map<Symptom, double[]> coefficients;

    SoundUnit(Map<Symptom, double[]> coefficients) {
        this.coefficients = new EnumMap<>(Symptom.class);
        this.coefficients.putAll(coefficients);
    }

    /**
     * The same of an efficiency that was told. What such equipment usually shows, any value of its span as likely (JCGM
     * 100:2008, 4.3.7), is one more piece of knowledge about the middle of the weather, weighed with what the simulated
     * units show by the variances of both.
     */
    SoundUnit ofEfficiency(Efficiency efficiency) {
        Band usual = efficiency.condensingOverOutdoor();
        double half = usual.high().minus(usual.low()).kelvins() / 2;
        double[] condensing = of(Symptom.CONDENSING_TEMPERATURE).clone();
        double weight = CONDENSING_VARIANCE / (CONDENSING_VARIANCE + half * half / 3);
        condensing[0] += weight * (usual.middle().kelvins() - condensing[0]);
        Map<Symptom, double[]> changed = new EnumMap<>(coefficients);
        changed.put(Symptom.CONDENSING_TEMPERATURE, condensing);
        return new SoundUnit(changed);
    }

    /** The powers that the coefficients belong to. */
    static double[] powers(double[] air) {
        double o = air[0] - MIDDLE[0];
        double w = air[1] - MIDDLE[1];
        double d = air[2] - MIDDLE[2];
        return new double[] {1, o, w, d, o * o, w * w, d * d, o * w, o * d, w * d};
    }

    /** K over the reference of the symptom, or °C for the evaporating temperature. */
    double expected(Symptom symptom, double[] air) {
        double[] powers = powers(air);
        double[] c = of(symptom);
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            sum += c[i] * powers[i];
        }
        return sum;
    }

    /** How it changes with each of the three temperatures. */
    double[] slopes(Symptom symptom, double[] air) {
        double o = air[0] - MIDDLE[0];
        double w = air[1] - MIDDLE[1];
        double d = air[2] - MIDDLE[2];
        double[] c = of(symptom);
        return new double[] {
            c[1] + 2 * c[4] * o + c[7] * w + c[8] * d,
            c[2] + 2 * c[5] * w + c[7] * o + c[9] * d,
            c[3] + 2 * c[6] * d + c[8] * o + c[9] * w
        };
    }

    private double[] of(Symptom symptom) {
        return coefficients.getOrDefault(symptom, new double[TERMS]);
    }

    static double[] parsed(List<String> words) {
        double[] c = new double[TERMS];
        for (int i = 0; i < TERMS; i++) {
            c[i] = Double.parseDouble(words.get(i));
        }
        return c;
    }
}
