package readback.assistant.probe;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import readback.assistant.dialogue.ProbeReport;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Unit;

/**
 * Whether the values of one channel stand still. Fed with them in the order of their times; knows no clock. Owned by
 * one thread.
 */
final class Stillness {

    /** A value is offered when it stood still for so long. Decision 0026. */
    static final long WINDOW_NANOS = TimeUnit.SECONDS.toNanos(60);

    /** After so long without a value, nothing is offered. Decision 0026. */
    static final long STALE_NANOS = TimeUnit.SECONDS.toNanos(5);

    /** A temperature stands still that moved by less: 1 °F, in kelvins. Decision 0026. */
    private static final double STILL_KELVINS = Unit.FAHRENHEIT_DEGREES.toBase(1);

    /** A pressure stands still that moved by less: 1.5 psi, in pascals. Decision 0026. */
    private static final double STILL_PASCALS = Unit.PSIG.toBase(1.5);

    /** Values that come more often than this tell nothing more. */
    private static final long CLOSEST_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

    private final double still;
    private final Deque<ProbeSample> window = new ArrayDeque<>();
    private Optional<ProbeSample> latest = Optional.empty();
    private long since;

    Stillness(Dimension dimension) {
        this.still = dimension == Dimension.TEMPERATURE ? STILL_KELVINS : STILL_PASCALS;
    }

    void take(ProbeSample sample) {
        if (latest.filter(last -> sample.nanoTime() - last.nanoTime() < 0).isPresent()) {
            return;
        }
        boolean broken = latest.map(last -> sample.nanoTime() - last.nanoTime() > STALE_NANOS)
                .orElse(true);
        if (broken || !Double.isFinite(sample.base()) || window.isEmpty()) {
            window.clear();
            since = sample.nanoTime();
        }
        latest = Optional.of(sample);
        if (!Double.isFinite(sample.base())) {
            return;
        }
        if (window.isEmpty() || sample.nanoTime() - window.getLast().nanoTime() >= CLOSEST_NANOS) {
            window.addLast(sample);
        }
        while (sample.nanoTime() - window.getFirst().nanoTime() > WINDOW_NANOS) {
            window.removeFirst();
        }
    }

    /** The connection is gone: what was seen before it counts no longer. */
    void broken() {
        window.clear();
        latest = Optional.empty();
    }

    /** The latest value. */
    Optional<ProbeSample> latest() {
        return latest;
    }

    /** What the values are worth now; empty before there was any. */
    Optional<ProbeReport.Quality> quality(long now) {
        return latest.map(sample -> quality(sample, now));
    }

    private ProbeReport.Quality quality(ProbeSample sample, long now) {
        if (now - sample.nanoTime() > STALE_NANOS) {
            return ProbeReport.Quality.STALE;
        }
        if (!Double.isFinite(sample.base())) {
            return ProbeReport.Quality.NOT_A_NUMBER;
        }
        double lowest = sample.base();
        double highest = sample.base();
        for (ProbeSample each : window) {
            lowest = Math.min(lowest, each.base());
            highest = Math.max(highest, each.base());
        }
        boolean longEnough = sample.nanoTime() - since >= WINDOW_NANOS;
        return longEnough && highest - lowest < still ? ProbeReport.Quality.STEADY : ProbeReport.Quality.CHANGING;
    }
}
