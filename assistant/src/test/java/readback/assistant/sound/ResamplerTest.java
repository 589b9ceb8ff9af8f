package readback.assistant.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The truth is the sine itself, evaluated at the new instants. */
class ResamplerTest {

    private static short[] sine(double hertz, int rate, double seconds) {
        short[] pcm = new short[(int) (seconds * rate)];
        for (int i = 0; i < pcm.length; i++) {
            pcm[i] = (short) Math.round(16000 * Math.sin(2 * Math.PI * hertz * i / rate));
        }
        return pcm;
    }

    private static double rms(short[] pcm, int from, int to) {
        return Math.sqrt(Arrays.stream(toInts(pcm), from, to)
                .mapToDouble(x -> (double) x * x)
                .average()
                .orElseThrow());
    }

    private static int[] toInts(short[] pcm) {
        int[] ints = new int[pcm.length];
        for (int i = 0; i < pcm.length; i++) {
            ints[i] = pcm[i];
        }
        return ints;
    }

    @ParameterizedTest
    @ValueSource(ints = {8000, 11025, 16000, 22050, 32000, 44100, 48000})
    void aToneOfSpeechKeepsItsPlaceAndItsStrength(int rate) {
        short[] out = Samples.of(sine(1000, rate, 0.5), rate).at(16000).pcm();
        short[] truth = sine(1000, 16000, 0.5);

        assertThat(out.length).isBetween(truth.length - 1, truth.length + 1);
        int worst = IntStream.range(400, truth.length - 400)
                .map(i -> Math.abs(out[i] - truth[i]))
                .max()
                .orElseThrow();
        assertThat(worst)
                .as("largest error from %d Hz, in steps of 16 bits", rate)
                .isLessThanOrEqualTo(12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {8700, 10000, 15000, 20000})
    void whatSixteenKilohertzCannotHoldIsNotFoldedIntoTheSpeechBand(double hertz) {
        short[] in = sine(hertz, 48000, 0.5);
        short[] out = Samples.of(in, 48000).at(16000).pcm();

        double decibels = 20 * Math.log10(rms(out, 400, out.length - 400) / rms(in, 0, in.length));
        assertThat(decibels).isLessThan(-60);
    }

    @Test
    void theUpperSpeechBandPasses() {
        short[] in = sine(7000, 48000, 0.5);
        short[] out = Samples.of(in, 48000).at(16000).pcm();

        double decibels = 20 * Math.log10(rms(out, 400, out.length - 400) / rms(in, 0, in.length));
        assertThat(decibels).isBetween(-0.2, 0.2);
    }

    @Test
    void chunksOfAnySizeGiveTheSameAsTheWhole() {
        long seed = 20261125;
        Random random = new Random(seed);
        short[] in = sine(440, 44100, 1);
        short[] whole = Resampler.resample(in, 44100, 16000);

        Resampler resampler = new Resampler(44100, 16000);
        short[] pieces = new short[0];
        for (int at = 0; at < in.length; ) {
            int end = Math.min(in.length, at + random.nextInt(2000));
            pieces = join(pieces, resampler.feed(Arrays.copyOfRange(in, at, end)));
            at = end;
        }
        pieces = join(pieces, resampler.finish());

        assertThat(pieces).as("seed %d", seed).isEqualTo(whole);
    }

    @Test
    void minutesOfChunksDoNotDrift() {
        Resampler resampler = new Resampler(44100, 16000);
        short[] second = new short[44100];
        long out = 0;
        for (int i = 0; i < 300; i++) {
            out += resampler.feed(second).length;
        }
        out += resampler.finish().length;

        assertThat(out).isEqualTo(300L * 16000);
    }

    private static short[] join(short[] a, short[] b) {
        short[] all = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, all, a.length, b.length);
        return all;
    }
}
