package readback.assistant.live;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import readback.assistant.microphone.SpeechLevel;

/**
 * Tells when the room is too loud to be understood reliably, from how far the last utterances stood out of the noise.
 * Owned by one thread.
 */
final class NoiseWatch {

    /** From here on the trouble counts as over, so that the advice does not flicker. */
    private static final double CLEAR = 13;

    /** One loud moment does not make a loud room. */
    private static final int IN_A_ROW = 2;

    private static final Duration SAID_ONCE_IN = Duration.ofMinutes(2);

    private int poor;
    private boolean loud;
    private Optional<Instant> said = Optional.empty();

    /**
     * Takes the next utterance; whether it should be said now that it is too loud.
     *
     * @param aboveNoise decibels between the loudest speech and the noise
     */
    boolean heard(double aboveNoise, Instant now) {
        poor = aboveNoise < SpeechLevel.RELIABLE_ABOVE_NOISE ? poor + 1 : 0;
        loud = poor >= IN_A_ROW || (loud && aboveNoise < CLEAR);
        boolean due = said.isEmpty() || now.isAfter(said.get().plus(SAID_ONCE_IN));
        if (loud && poor >= IN_A_ROW && due) {
            said = Optional.of(now);
            return true;
        }
        return false;
    }

    /** Whether it is too loud. */
    boolean loud() {
        return loud;
    }
}
