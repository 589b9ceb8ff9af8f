package readback.assistant.setup;

import java.util.Optional;
import readback.assistant.microphone.SpeechLevel;
import readback.prompts.text.Message;

/** How loud the place is. */
final class NoiseStep implements SetupStep {

    /** Speech that stands out by this much is heard as in a quiet place, in decibels; docs/measures.md. */
    private static final double QUIET = 20;

    @Override
    public Step step() {
        return Step.NOISE;
    }

    @Override
    public boolean listens() {
        return true;
    }

    @Override
    public Optional<SetupEffect> begins() {
        return Optional.of(SetupEffect.Trial.NOISE);
    }

    /** The noise was measured. */
    Turn taken(SetupState state, SetupEvent.NoiseTaken taken) {
        double noise = taken.noise();
        Message meaning = state.sound()
                .speech()
                .map(speech -> Message.of("setup.noise." + outlook(speech - noise))
                        .with("above", Decibels.above(speech - noise)))
                .orElseGet(() -> Message.of("setup.noise.unknown"));
        return Turn.of(state.telling(Message.of("setup.noise.level").with("noise", Decibels.of(noise)), meaning));
    }

    private static String outlook(double above) {
        return above >= QUIET ? "quiet" : above >= SpeechLevel.RELIABLE_ABOVE_NOISE ? "usable" : "loud";
    }
}
