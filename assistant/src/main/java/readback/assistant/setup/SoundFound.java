package readback.assistant.setup;

import java.util.Optional;
import readback.assistant.echo.EchoTrial;

/**
 * What was found out about the sound. Immutable.
 *
 * @param microphone the one that is listened to
 * @param loudspeaker the one that speaks
 * @param audible whether the person heard it
 * @param speech how loud the person speaks, in decibels of full scale
 * @param echo what came of listening to the own voice
 */
record SoundFound(
        Optional<String> microphone,
        Optional<String> loudspeaker,
        boolean audible,
        Optional<Double> speech,
        Optional<EchoTrial.Outcome> echo) {

    static final SoundFound NOTHING =
            new SoundFound(Optional.empty(), Optional.empty(), false, Optional.empty(), Optional.empty());

    /** Another microphone: what was measured with the one before says nothing any more. */
    SoundFound listeningTo(Optional<String> device) {
        return new SoundFound(device, loudspeaker, audible, Optional.empty(), Optional.empty());
    }

    /** Another loudspeaker, not heard yet. */
    SoundFound speakingBy(Optional<String> device) {
        return new SoundFound(microphone, device, false, speech, Optional.empty());
    }

    SoundFound heardByPerson() {
        return new SoundFound(microphone, loudspeaker, true, speech, echo);
    }

    SoundFound spokenAt(double level) {
        return new SoundFound(microphone, loudspeaker, audible, Optional.of(level), echo);
    }

    SoundFound tried(EchoTrial.Outcome outcome) {
        return new SoundFound(microphone, loudspeaker, audible, speech, Optional.of(outcome));
    }
}
