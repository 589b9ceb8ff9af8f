package readback.assistant.sound;

import java.util.Arrays;

/**
 * Changes the sample rate of a stream of sound, chunk by chunk.
 *
 * <p>A windowed-sinc low-pass in polyphase form: the pass band reaches 0.85 of the lower Nyquist frequency, the Kaiser
 * window (beta 8.0; J. F. Kaiser, "Nonrecursive digital filter design using the I0-sinh window function", 1974) holds
 * what lies above it more than 70 dB down. The output is aligned with the input: the filter's delay is taken out.
 *
 * <p>One thread at a time.
 */
public final class Resampler {
    /** Zero crossings of the sinc on each side of its centre. */
    private static final int CROSSINGS = 32;

    private static final double KAISER_BETA = 8.0;
    private static final double PASS = 0.93;

    private final int up;
    private final int down;
    /** Input samples on each side of an output sample that take part in it. */
    private final int reach;
    /** Filter coefficients by phase; each row holds 2 * reach. */
    private final float[][] phases;

    private float[] held;
    private int heldLength;
    /** Index in the whole input of held[0]. */
    private long heldFrom;
    /** Index of the next output sample. */
    private long next;

    private long taken;

    /**
     * A resampler at the start of its stream.
     *
     * @param from samples a second of what is fed, positive
     * @param to samples a second of what comes out, positive
     */
    public Resampler(int from, int to) {
        if (from <= 0 || to <= 0) {
            throw new IllegalArgumentException("Sample rates are positive, not " + from + " and " + to + " Hz.");
        }
        int divisor = greatestCommonDivisor(from, to);
        up = to / divisor;
        down = from / divisor;
        double cutoff = PASS * Math.min(1, (double) to / from);
        reach = (int) Math.ceil(CROSSINGS / cutoff);
        phases = new float[up][2 * reach];
        for (int phase = 0; phase < up; phase++) {
            fill(phases[phase], (double) phase / up, cutoff);
        }
        held = new float[8 * reach];
        heldLength = reach;
        heldFrom = -reach;
    }

    private void fill(float[] row, double fraction, double cutoff) {
        double sum = 0;
        for (int tap = 0; tap < row.length; tap++) {
            double distance = tap - (reach - 1) - fraction;
            double position = distance / reach;
            double window = Math.abs(position) >= 1
                    ? 0
                    : bessel(KAISER_BETA * Math.sqrt(1 - position * position)) / bessel(KAISER_BETA);
            double x = Math.PI * cutoff * distance;
            double sinc = Math.abs(x) < 1e-9 ? 1 : Math.sin(x) / x;
            row[tap] = (float) (cutoff * sinc * window);
            sum += row[tap];
        }
        // A constant stays the same constant in every phase.
        for (int tap = 0; tap < row.length; tap++) {
            row[tap] /= (float) sum;
        }
    }

    /** The modified Bessel function of the first kind, order zero, by its power series. */
    private static double bessel(double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; term > 1e-12 * sum; k++) {
            term *= (x / (2 * k)) * (x / (2 * k));
            sum += term;
        }
        return sum;
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }

    /** The output that can be told after this chunk; the last few milliseconds are held back for the next one. */
    public short[] feed(short[] chunk) {
        append(chunk);
        taken += chunk.length;
        return drain(taken - reach);
    }

    /** The output still held back, as if silence followed; the stream is over. */
    public short[] finish() {
        append(new short[reach + 1]);
        return drain(taken);
    }

    private void append(short[] chunk) {
        if (heldLength + chunk.length > held.length) {
            held = Arrays.copyOf(held, Math.max(2 * held.length, heldLength + chunk.length));
        }
        for (short sample : chunk) {
            held[heldLength++] = sample;
        }
    }

    /** Every output sample whose place in the input lies before {@code limit}. */
    private short[] drain(long limit) {
        // Output n lies at input position n * down / up.
        long end = limit <= 0 ? next : Math.max(next, (limit * up + down - 1) / down);
        short[] out = new short[Math.toIntExact(end - next)];
        for (int i = 0; i < out.length; i++, next++) {
            long position = next * down;
            int start = Math.toIntExact(position / up - (reach - 1) - heldFrom);
            float[] row = phases[(int) (position % up)];
            float sum = 0;
            for (int tap = 0; tap < row.length; tap++) {
                sum += row[tap] * held[start + tap];
            }
            out[i] = Samples.clipped(sum);
        }
        int spent = Math.toIntExact(Math.min(heldLength, Math.max(0, next * down / up - (reach - 1) - heldFrom)));
        System.arraycopy(held, spent, held, 0, heldLength - spent);
        heldLength -= spent;
        heldFrom += spent;
        return out;
    }

    /** A whole sound at another rate; its length is that of the original times {@code to / from}, rounded up. */
    static short[] resample(short[] pcm, int from, int to) {
        Resampler resampler = new Resampler(from, to);
        short[] first = resampler.feed(pcm);
        short[] rest = resampler.finish();
        short[] all = Arrays.copyOf(first, first.length + rest.length);
        System.arraycopy(rest, 0, all, first.length, rest.length);
        return all;
    }
}
