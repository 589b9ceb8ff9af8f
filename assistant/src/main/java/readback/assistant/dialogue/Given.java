package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.quantity.Reading;

/**
 * A value that somebody gives for the sheet.
 *
 * @param probe where a value came from that was taken from a probe; empty for one that was called out or typed
 */
public record Given(Reading reading, Optional<ProbeSource> probe) {

    static Given calledOut(Reading reading) {
        return new Given(reading, Optional.empty());
    }
}
