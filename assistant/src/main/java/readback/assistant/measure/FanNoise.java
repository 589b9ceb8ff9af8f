package readback.assistant.measure;

import java.util.SplittableRandom;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Samples;

/**
 * The noise of a condenser fan: broadband and falling, with the blade-pass tone of a three-blade fan at 1,075
 * revolutions a minute and the hum of a transformer. Computed from a seed, so the same every time; a stand-in for
 * recordings of real condensing units, which it resembles without being one.
 */
final class FanNoise {

    private static final double BLADE_HERTZ = 3 * 1075 / 60.0;
    private static final double HUM_HERTZ = 120;
    /** Loudness is taken over the frames that hold speech: those within this share of the loudest. */
    private static final double SPEECH_FLOOR = 0.03;

    private FanNoise() {}

    /** The sound with fan noise added, so that speech stands that many decibels above it. */
    static Samples mixed(Samples sound, double signalToNoise, long seed) {
        double[] noise = noise(sound.length(), sound.rate(), seed);
        double level = speechLevel(sound.pcm()) / Math.pow(10, signalToNoise / 20);
        short[] mixed = sound.pcm();
        for (int i = 0; i < mixed.length; i++) {
            double sum = mixed[i] + level * noise[i];
            mixed[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(sum)));
        }
        return Samples.of(mixed, sound.rate());
    }

    /** Only the fan, at 16 kHz, with this root mean square on the scale of 16-bit samples. */
    static Samples alone(double seconds, double level, long seed) {
        double[] noise = noise((int) Math.round(seconds * Ear.RATE), Ear.RATE, seed);
        short[] pcm = new short[noise.length];
        for (int i = 0; i < pcm.length; i++) {
            pcm[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(level * noise[i])));
        }
        return Samples.of(pcm, Ear.RATE);
    }

    private static double speechLevel(short[] pcm) {
        int frame = 400;
        double loudest = 0;
        double[] powers = new double[Math.max(1, pcm.length / frame)];
        for (int f = 0; f < powers.length; f++) {
            double sum = 0;
            for (int i = f * frame; i < Math.min(pcm.length, (f + 1) * frame); i++) {
                sum += (double) pcm[i] * pcm[i];
            }
            powers[f] = sum / frame;
            loudest = Math.max(loudest, powers[f]);
        }
        double total = 0;
        int speaking = 0;
        for (double power : powers) {
            if (power > SPEECH_FLOOR * loudest) {
                total += power;
                speaking++;
            }
        }
        return Math.sqrt(total / Math.max(1, speaking));
    }

    private static double[] noise(int length, int rate, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] noise = new double[length];
        double low = 0;
        double power = 0;
        for (int i = 0; i < length; i++) {
            double white = random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5;
            low = 0.93 * low + 2 * white;
            double t = (double) i / rate;
            double swell = 1 + 0.15 * Math.sin(2 * Math.PI * 0.7 * t);
            noise[i] = swell * low
                    + 0.5 * white
                    + 0.9 * Math.sin(2 * Math.PI * BLADE_HERTZ * t)
                    + 0.5 * Math.sin(2 * Math.PI * HUM_HERTZ * t);
            power += noise[i] * noise[i];
        }
        double scale = 1 / Math.sqrt(power / Math.max(1, length));
        for (int i = 0; i < length; i++) {
            noise[i] *= scale;
        }
        return noise;
    }
}
