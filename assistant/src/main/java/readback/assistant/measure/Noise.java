package readback.assistant.measure;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Samples;

/**
 * Noises of the places where units stand. Computed from a number that starts the chance in them, so the same every
 * time; stand-ins for recordings, which they resemble without being one.
 */
public enum Noise {
    /**
     * A condenser fan: broadband and falling, with the blade-pass tone of a three-blade fan at 1,075 revolutions a
     * minute and the hum of a transformer.
     */
    FAN {
        @Override
        double[] drawn(int length, int rate, RandomGenerator random) {
            double[] noise = new double[length];
            double low = 0;
            for (int i = 0; i < length; i++) {
                double white = white(random);
                low = 0.93 * low + 2 * white;
                double t = (double) i / rate;
                double swell = 1 + 0.15 * Math.sin(2 * Math.PI * 0.7 * t);
                noise[i] = swell * low
                        + 0.5 * white
                        + 0.9 * Math.sin(2 * Math.PI * BLADE_HERTZ * t)
                        + 0.5 * Math.sin(2 * Math.PI * HUM_HERTZ * t);
            }
            return noise;
        }
    },
    /** Sheet metal that is struck about four times a second beside a fan: rings that die within a tenth of a second. */
    CLATTER {
        @Override
        double[] drawn(int length, int rate, RandomGenerator random) {
            double[] noise = scaled(FAN.drawn(length, rate, random), 1);
            double[] rings = new double[length];
            int at = random.nextInt(rate / 4);
            while (at < length) {
                double loudness = 0.4 + random.nextDouble();
                for (int mode = 0; mode < 3; mode++) {
                    double hertz = 500 * Math.pow(10, random.nextDouble());
                    double dying = 1 / (rate * (0.015 + 0.03 * random.nextDouble()));
                    for (int i = at; i < Math.min(length, at + rate / 4); i++) {
                        rings[i] += loudness
                                * Math.exp(-dying * (i - at))
                                * Math.sin(2 * Math.PI * hertz * (i - at) / rate);
                    }
                }
                at += (int) (rate * (0.12 + 0.26 * random.nextDouble()));
            }
            double[] even = scaled(rings, 0.7);
            for (int i = 0; i < length; i++) {
                noise[i] += even[i];
            }
            return noise;
        }
    },
    /** Wind at the microphone: gusts of a second or so, most of it below 120 Hz. */
    WIND {
        @Override
        double[] drawn(int length, int rate, RandomGenerator random) {
            double[] noise = new double[length];
            double pole = Math.exp(-2 * Math.PI * 60 / rate);
            double first = 0;
            double second = 0;
            double gust = 0.3;
            double towards = 0.3;
            for (int i = 0; i < length; i++) {
                if (i % (rate / 3) == 0) {
                    towards = 0.08 + Math.pow(random.nextDouble(), 2);
                }
                gust += (towards - gust) * 5.0 / rate;
                double white = white(random);
                first = pole * first + (1 - pole) * white;
                second = pole * second + (1 - pole) * first;
                noise[i] = gust * (first + 2 * second + 0.02 * white);
            }
            return noise;
        }
    },
    /** A road nearby: rolling tyres around 800 Hz and engines, vehicles that come and go within seconds. */
    ROAD {
        @Override
        double[] drawn(int length, int rate, RandomGenerator random) {
            double[] noise = new double[length];
            double high = Math.exp(-2 * Math.PI * 1200 / rate);
            double low = Math.exp(-2 * Math.PI * 300 / rate);
            double tyres = 0;
            double body = 0;
            double engine = 0;
            double hertz = 70;
            double begins = 6 * random.nextDouble();
            for (int i = 0; i < length; i++) {
                double t = begins + (double) i / rate;
                double near = 0.25 + Math.pow(0.5 - 0.5 * Math.cos(2 * Math.PI * t / 3.7), 2);
                double white = white(random);
                tyres = high * tyres + (1 - high) * white;
                body = low * body + (1 - low) * white;
                hertz += (60 + 40 * near - hertz) / rate;
                engine += 2 * Math.PI * hertz / rate;
                noise[i] = near * (tyres - 0.6 * body + 0.03 * (Math.sin(engine) + 0.5 * Math.sin(2 * engine)))
                        + 0.1 * body;
            }
            return noise;
        }
    };

    private static final double BLADE_HERTZ = 3 * 1075 / 60.0;
    private static final double HUM_HERTZ = 120;
    /** Loudness is taken over the frames that hold speech: those within this share of the loudest. */
    private static final double SPEECH_FLOOR = 0.03;

    /** So many samples, of any loudness. */
    abstract double[] drawn(int length, int rate, RandomGenerator random);

    /** The sound with this noise added, so that speech stands that many decibels above it. */
    public Samples mixed(Samples sound, double signalToNoise, long start) {
        double[] noise = even(sound.length(), sound.rate(), start);
        short[] mixed = sound.pcm();
        double level = speechLevel(mixed) / Math.pow(10, signalToNoise / 20);
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = Samples.clipped(mixed[i] + level * noise[i]);
        }
        return Samples.of(mixed, sound.rate());
    }

    /** Only the noise, at {@link Ear#RATE}, with this root mean square on the scale of 16-bit samples. */
    Samples alone(double seconds, double level, long start) {
        double[] noise = even((int) Math.round(seconds * Ear.RATE), Ear.RATE, start);
        short[] pcm = new short[noise.length];
        for (int i = 0; i < pcm.length; i++) {
            pcm[i] = Samples.clipped(level * noise[i]);
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

    private double[] even(int length, int rate, long start) {
        return scaled(drawn(length, rate, new SplittableRandom(start)), 1);
    }

    /** To this root mean square, in place. */
    private static double[] scaled(double[] noise, double level) {
        double power = 0;
        for (double each : noise) {
            power += each * each;
        }
        double scale = level / Math.sqrt(power / Math.max(1, noise.length));
        for (int i = 0; i < noise.length; i++) {
            noise[i] *= scale;
        }
        return noise;
    }

    private static double white(RandomGenerator random) {
        return random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5;
    }
}
