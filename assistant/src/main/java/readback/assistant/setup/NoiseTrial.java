package readback.assistant.setup;

import java.util.function.Consumer;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.microphone.Microphone;

/** Nobody says anything: how loud the place is. */
final class NoiseTrial implements Trial {

    private static final double SECONDS = 3;

    private final Consumer<SetupEvent> outcome;
    private double power;
    private long samples;

    NoiseTrial(Consumer<SetupEvent> outcome) {
        this.outcome = outcome;
    }

    @Override
    public void sound(short[] chunk, short[] playedThen) {
        for (short sample : chunk) {
            power += (double) sample * sample;
        }
        samples += chunk.length;
        if (samples >= SECONDS * Microphone.RATE) {
            double full = (double) Short.MIN_VALUE * Short.MIN_VALUE;
            outcome.accept(new SetupEvent.NoiseTaken(
                    Math.max(LevelMeter.SILENCE, 10 * Math.log10(Math.max(1e-9, power / samples / full)))));
        }
    }
}
