package readback.assistant.setup;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.echo.EchoTrial;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.microphone.Microphone;

/** It listens to itself: a moment of quiet, its own voice until that is enough, a moment of quiet. */
final class VoiceTrial implements Trial {

    /** So long what was said before may still be on its way from the loudspeaker to the microphone. */
    private static final double SETTLING_SECONDS = 1;

    /** How long the place is listened to before the voice begins, and after it ended. */
    private static final double QUIET_SECONDS = 1;

    /** Speaks beside the trial. */
    @FunctionalInterface
    interface Speech {
        /**
         * @param more whether it is said once more
         * @param ended takes why it could not be said to its end, on the thread of the trial; empty where it was
         */
        void begin(BooleanSupplier more, Consumer<Optional<String>> ended);
    }

    private final EchoTrial echo;
    private final Speech speech;
    private final Consumer<SetupEvent> outcome;
    private double settling;
    private double quiet;
    private volatile boolean enough;
    private boolean begun;
    private boolean spoken;
    private boolean over;

    VoiceTrial(EchoCanceller canceller, Speech speech, Consumer<SetupEvent> outcome) {
        this.echo = new EchoTrial(canceller, LevelMeter.USUAL_GATE);
        this.speech = speech;
        this.outcome = outcome;
    }

    @Override
    public void sound(short[] chunk, short[] playedThen) {
        double seconds = (double) chunk.length / Microphone.RATE;
        if (!begun && !settled(seconds, playedThen)) {
            return;
        }
        echo.hear(chunk, playedThen);
        enough = echo.enough();
        quiet += begun && !spoken ? 0 : seconds;
        if (!begun && quiet >= QUIET_SECONDS) {
            begun = true;
            quiet = 0;
            speech.begin(() -> !enough, this::spoken);
        } else if (spoken && quiet >= QUIET_SECONDS) {
            outcome.accept(new SetupEvent.EchoTried(Optional.of(echo.result()), Optional.empty()));
        }
    }

    /** Whether what was said before is over; it is neither quiet nor what is listened to. */
    private boolean settled(double seconds, short[] playedThen) {
        settling = EchoTrial.speaks(playedThen) ? 0 : settling + seconds;
        return settling > SETTLING_SECONDS;
    }

    private void spoken(Optional<String> failure) {
        spoken = true;
        if (failure.isPresent() && !over) {
            outcome.accept(new SetupEvent.EchoTried(Optional.empty(), failure));
        }
    }

    @Override
    public void over() {
        over = true;
        echo.close();
    }
}
