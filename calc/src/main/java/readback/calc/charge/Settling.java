package readback.calc.charge;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import readback.calc.quantity.TemperatureDifference;

/**
 * Whether superheat or subcooling has settled: its trend against its scatter, by least squares.
 *
 * @param steadiness the conclusion
 * @param perMinute slope of the straight line through the samples
 * @param slopeUncertainty standard error of the slope
 * @param scatter standard deviation of the samples about the line
 */
public record Settling(
        Steadiness steadiness,
        TemperatureDifference perMinute,
        TemperatureDifference slopeUncertainty,
        TemperatureDifference scatter) {

    /**
     * 0.1 °F a minute, 1.5 °F through the fifteen minutes that California Energy Commission RA3.2.2.5 has the system
     * run: half the narrowest tolerance. The figure is ours.
     */
    private static final double STEADY_PER_MINUTE =
            TemperatureDifference.fahrenheit(0.1).kelvins();

    /** A valve that swings by more than 3 °F either way is hunting. Common practice, no source. */
    private static final double HUNTING_SWING =
            TemperatureDifference.fahrenheit(3).kelvins();

    private static final int FEWEST_SAMPLES = 4;
    private static final int FEWEST_CROSSINGS = 3;

    /** What the samples allow to say. */
    public enum Steadiness {
        /** Judge now. */
        STEADY,
        /** Still moving: wait. */
        DRIFTING,
        /** Swings regularly: an expansion valve hunts; judge the mean, and do not charge on one sample. */
        HUNTING,
        /** Fewer than four samples, or less than two minutes. */
        TOO_FEW,
        /** So much scatter that a trend could hide in it. */
        UNCLEAR
    }

    /**
     * One reading of superheat or subcooling.
     *
     * @param elapsed since any fixed moment
     */
    public record Sample(Duration elapsed, TemperatureDifference value) {}

    /** The conclusion from samples in any order. */
    public static Settling of(List<Sample> samples) {
        List<Sample> ordered =
                samples.stream().sorted(Comparator.comparing(Sample::elapsed)).toList();
        int count = ordered.size();
        if (count < FEWEST_SAMPLES || minutes(ordered.get(count - 1)) - minutes(ordered.get(0)) < 2 - 1e-9) {
            TemperatureDifference none = TemperatureDifference.kelvins(0);
            return new Settling(Steadiness.TOO_FEW, none, none, none);
        }
        double meanTime =
                ordered.stream().mapToDouble(Settling::minutes).average().orElseThrow();
        double meanValue = ordered.stream()
                .mapToDouble(sample -> sample.value().kelvins())
                .average()
                .orElseThrow();
        double timeSquares = 0;
        double products = 0;
        for (Sample sample : ordered) {
            double time = minutes(sample) - meanTime;
            timeSquares += time * time;
            products += time * (sample.value().kelvins() - meanValue);
        }
        double slope = products / timeSquares;
        double residualSquares = 0;
        double largest = 0;
        int crossings = 0;
        double before = 0;
        for (Sample sample : ordered) {
            double residual = sample.value().kelvins() - meanValue - slope * (minutes(sample) - meanTime);
            residualSquares += residual * residual;
            largest = Math.max(largest, Math.abs(residual));
            crossings += residual * before < 0 ? 1 : 0;
            before = residual;
        }
        double scatter = Math.sqrt(residualSquares / (count - 2));
        double slopeUncertainty = scatter / Math.sqrt(timeSquares);
        return new Settling(
                steadiness(slope, slopeUncertainty, largest, crossings),
                TemperatureDifference.kelvins(slope),
                TemperatureDifference.kelvins(slopeUncertainty),
                TemperatureDifference.kelvins(scatter));
    }

    private static Steadiness steadiness(double slope, double uncertainty, double largest, int crossings) {
        if (largest > HUNTING_SWING && crossings >= FEWEST_CROSSINGS) {
            return Steadiness.HUNTING;
        }
        // two standard errors: about 95 %
        if (Math.abs(slope) + 2 * uncertainty <= STEADY_PER_MINUTE) {
            return Steadiness.STEADY;
        }
        return Math.abs(slope) > STEADY_PER_MINUTE && Math.abs(slope) > 2 * uncertainty
                ? Steadiness.DRIFTING
                : Steadiness.UNCLEAR;
    }

    private static double minutes(Sample sample) {
        return sample.elapsed().toNanos() / 60e9;
    }
}
