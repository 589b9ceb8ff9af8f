package readback.assistant.bench;

import readback.assistant.voice.Reader;
import readback.assistant.voice.Voice;

/**
 * Somebody who calls out readings.
 *
 * @param name as it is given to the command
 */
public record Caller(String name, Reader.Acquaintance acquaintance, Voice voice) {

    boolean stranger() {
        return acquaintance == Reader.Acquaintance.STRANGER;
    }

    /** "flite, rms", and whether it was trained on. */
    @Override
    public String toString() {
        return voice.name() + (stranger() ? "" : " (the model was trained on this speaker)");
    }
}
