package readback.assistant.echo;

import java.util.SplittableRandom;
import readback.assistant.ear.Ear;

/**
 * How a loudspeaker sounds at a microphone in the same room: late, bent by the loudspeaker, and with the reverberation
 * that dies away by 60 dB within a quarter of a second, as in a garage or between two walls outdoors (our choice).
 *
 * @param delayMillis from the sound's way to the loudspeaker to its arrival in what the microphone gives
 * @param gain of the direct sound and its reverberation together
 */
record Room(int delayMillis, double gain) {

    private static final double DECAY_SECONDS = 0.25;
    private static final int DECAY = (int) (DECAY_SECONDS * Ear.RATE);
    private static final int REFLECTIONS = 60;

    /** What the microphone hears of this. */
    double[] heard(short[] played) {
        int delay = delayMillis * Ear.RATE / 1000;
        SplittableRandom random = new SplittableRandom(delayMillis);
        int[] late = new int[REFLECTIONS];
        double[] strong = new double[REFLECTIONS];
        late[0] = 0;
        strong[0] = 1;
        for (int i = 1; i < REFLECTIONS; i++) {
            late[i] = random.nextInt(DECAY);
            // amplitude falls by 60 dB over the decay
            strong[i] = 0.35 * Math.pow(10, -3.0 * late[i] / DECAY) * (random.nextBoolean() ? 1 : -1);
        }
        double[] out = new double[played.length];
        for (int n = 0; n < played.length; n++) {
            double bent = 28000 * Math.tanh(played[n] / 28000.0);
            if (bent == 0) {
                continue;
            }
            for (int i = 0; i < REFLECTIONS; i++) {
                int at = n + delay + late[i];
                if (at < out.length) {
                    out[at] += gain * strong[i] * bent;
                }
            }
        }
        return out;
    }
}
