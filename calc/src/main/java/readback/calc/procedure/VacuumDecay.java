package readback.calc.procedure;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Unit;

/** The rise of pressure in an evacuated, isolated circuit: what it says about leaks and moisture. */
public final class VacuumDecay {

    /**
     * A rise that slows to less than half is levelling off: water or refrigerant boils out until its own vapour
     * pressure is reached, while a leak from the air climbs evenly. Common practice, no source for the figure.
     */
    private static final double LEVELLING = 0.5;

    /**
     * Less than this between two looks is no climb: what a vacuum gauge shows for a steady pressure comes and goes by
     * about so much. Common practice, no source.
     */
    private static final AbsolutePressure STANDS_STILL = AbsolutePressure.pascals(Unit.MICRON.toBase(20));

    private VacuumDecay() {}

    /**
     * One look at the vacuum gauge.
     *
     * @param elapsed since the pump was isolated
     */
    public record Sample(Duration elapsed, AbsolutePressure pressure) {}

    /** What the samples mean. */
    public enum Outcome {
        /** Dry and tight by the criterion: not above the limit, and the rise levels off. */
        TIGHT,
        /** Not above the limit, but still climbing as fast as at first: a longer hold must tell. */
        CLIMBING,
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
        if (!criterion.deepEnough(first.pressure())) {
            return Outcome.NOT_DEEP_ENOUGH;
        }
        if (last.pressure().compareTo(criterion.mustStayBelow()) > 0) {
            return cause(ordered);
        }
        boolean waited = last.elapsed().minus(first.elapsed()).compareTo(criterion.hold()) >= 0;
        if (!waited) {
            return Outcome.WAIT;
        }
        return ordered.size() < 3 || levels(ordered) ? Outcome.TIGHT : Outcome.CLIMBING;
    }

    /**
     * Pascals a minute from the first sample to the last; empty for fewer than two samples or no time between them. A
     * leak of the same size raises a smaller circuit faster.
     */
    public static OptionalDouble pascalsPerMinute(List<Sample> samples) {
        List<Sample> ordered =
                samples.stream().sorted(Comparator.comparing(Sample::elapsed)).toList();
        if (ordered.size() < 2
                || ordered.get(0)
                        .elapsed()
                        .equals(ordered.get(ordered.size() - 1).elapsed())) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(60 * rate(ordered.get(0), ordered.get(ordered.size() - 1)));
    }

    private static Outcome cause(List<Sample> ordered) {
        if (ordered.size() < 3) {
            return Outcome.FAILED;
        }
        return levels(ordered) ? Outcome.MOISTURE : Outcome.LEAK;
    }

    /** Whether the pressure rose much slower in the second half of the time than in the first. */
    private static boolean levels(List<Sample> ordered) {
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
        double rise = last.pressure().pascals() - middle.pressure().pascals();
        return rise <= STANDS_STILL.pascals() || late < LEVELLING * early;
    }

    private static double rate(Sample from, Sample to) {
        return (to.pressure().pascals() - from.pressure().pascals()) / (seconds(to) - seconds(from));
    }

    private static double seconds(Sample sample) {
        return sample.elapsed().toNanos() * 1e-9;
    }
}
