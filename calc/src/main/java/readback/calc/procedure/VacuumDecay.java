package readback.calc.procedure;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import readback.calc.quantity.AbsolutePressure;

/** The rise of pressure in an evacuated, isolated circuit: what it says about leaks and moisture. */
public final class VacuumDecay {

    /**
     * A rise that slows to less than half is levelling off: water or refrigerant boils out until its own vapour
     * pressure is reached, while a leak from the air climbs evenly. Common practice, no source for the figure.
     */
    private static final double LEVELLING = 0.5;

    private VacuumDecay() {}

    /**
     * One look at the vacuum gauge.
     *
     * @param elapsed since the pump was isolated
     */
    public record Sample(Duration elapsed, AbsolutePressure pressure) {}

    /** What the samples mean. */
    public enum Outcome {
        /** Dry and tight by the criterion. */
        TIGHT,
        /** Rose and levels off: moisture, or refrigerant boiling out of oil. */
        MOISTURE,
        /** Climbs evenly: a leak. */
        LEAK,
        /** Above the limit, but too few samples to tell a leak from moisture. */
        FAILED,
        /** The pump was isolated too early. */
        NOT_DEEP_ENOUGH,
        /** Still below the limit, but the wait is not over. */
        WAIT
    }

    /**
     * The outcome by the criterion.
     *
     * @param samples in any order, the first taken when the pump is isolated; at least one
     * @throws IllegalArgumentException without samples
     */
    public static Outcome judge(List<Sample> samples, VacuumCriterion criterion) {
        if (samples.isEmpty()) {
            throw new IllegalArgumentException("a decay needs at least the pressure at isolation");
        }
        List<Sample> ordered =
                samples.stream().sorted(Comparator.comparing(Sample::elapsed)).toList();
        Sample first = ordered.get(0);
        Sample last = ordered.get(ordered.size() - 1);
        if (first.pressure().compareTo(criterion.pumpDownTo()) > 0) {
            return Outcome.NOT_DEEP_ENOUGH;
        }
        if (last.pressure().compareTo(criterion.mustStayBelow()) > 0) {
            return cause(ordered);
        }
        boolean waited = last.elapsed().minus(first.elapsed()).compareTo(criterion.hold()) >= 0;
        return waited ? Outcome.TIGHT : Outcome.WAIT;
    }

    /** Compares how fast the pressure rose in the first and in the second half of the time. */
    private static Outcome cause(List<Sample> ordered) {
        if (ordered.size() < 3) {
            return Outcome.FAILED;
        }
        Sample first = ordered.get(0);
        Sample last = ordered.get(ordered.size() - 1);
        double half = (seconds(first) + seconds(last)) / 2;
        Sample middle = ordered.get(1);
        for (Sample sample : ordered.subList(1, ordered.size() - 1)) {
            if (Math.abs(seconds(sample) - half) < Math.abs(seconds(middle) - half)) {
                middle = sample;
            }
        }
        double early = rate(first, middle);
        double late = rate(middle, last);
        return late < LEVELLING * early ? Outcome.MOISTURE : Outcome.LEAK;
    }

    private static double rate(Sample from, Sample to) {
        return (to.pressure().pascals() - from.pressure().pascals()) / (seconds(to) - seconds(from));
    }

    private static double seconds(Sample sample) {
        return sample.elapsed().toNanos() * 1e-9;
    }
}
