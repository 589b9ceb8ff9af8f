package readback.assistant.sound;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** One channel of sound, 16 bits a sample; immutable. */
public final class Samples {
    private final short[] pcm;
    private final int rate;

    private Samples(short[] pcm, int rate) {
        if (rate <= 0) {
            throw new IllegalArgumentException("A sample rate is positive, not " + rate + " Hz.");
        }
        this.pcm = pcm;
        this.rate = rate;
    }

    /**
     * Sound of the given samples.
     *
     * @param pcm copied
     * @param rate samples a second
     */
    public static Samples of(short[] pcm, int rate) {
        return new Samples(pcm.clone(), rate);
    }

    /** Nothing audible for {@code seconds}, zero or more. */
    public static Samples silence(double seconds, int rate) {
        return new Samples(new short[(int) Math.round(seconds * rate)], rate);
    }

    /**
     * The parts one after the other, each resampled to {@code rate} where it has another.
     *
     * @param rate samples a second of the result
     */
    public static Samples joined(List<Samples> parts, int rate) {
        List<Samples> alike = parts.stream().map(part -> part.at(rate)).toList();
        short[] all = new short[alike.stream().mapToInt(Samples::length).sum()];
        int at = 0;
        for (Samples part : alike) {
            System.arraycopy(part.pcm, 0, all, at, part.pcm.length);
            at += part.pcm.length;
        }
        return new Samples(all, rate);
    }

    /** The same sound at another rate; what the new rate cannot hold is filtered out, not folded. */
    public Samples at(int newRate) {
        if (newRate == rate) {
            return this;
        }
        return new Samples(Resampler.resample(pcm, rate, newRate), newRate);
    }

    /** The value as a sample, the loudest there is where it is louder. */
    public static short clipped(double value) {
        return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
    }

    /** The same sound with every sample times {@code gain}, clipped. */
    public Samples times(double gain) {
        short[] louder = new short[pcm.length];
        for (int i = 0; i < pcm.length; i++) {
            louder[i] = clipped(gain * pcm[i]);
        }
        return new Samples(louder, rate);
    }

    /** A copy of the samples. */
    public short[] pcm() {
        return pcm.clone();
    }

    /** A copy of the samples from index {@code from} to before {@code to}; what lies past the end is left out. */
    public short[] slice(int from, int to) {
        return Arrays.copyOfRange(pcm, Math.min(from, pcm.length), Math.min(to, pcm.length));
    }

    /** Samples a second. */
    public int rate() {
        return rate;
    }

    public int length() {
        return pcm.length;
    }

    public double seconds() {
        return (double) pcm.length / rate;
    }

    /** The root mean square of the samples relative to full scale, 0 (silence or empty) to 1. */
    public double loudness() {
        double sum = 0;
        for (short sample : pcm) {
            sum += (double) sample * sample;
        }
        return pcm.length == 0 ? 0 : Math.sqrt(sum / pcm.length) / -Short.MIN_VALUE;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Samples that && that.rate == rate && Arrays.equals(that.pcm, pcm);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(pcm) + rate;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f s of sound at %d Hz", seconds(), rate);
    }
}
