package readback.assistant.live;

/** When the microphone is listened to. */
public enum ListeningMode {
    /** Always, save while Readback speaks itself. */
    OPEN,
    /** From a press of the talk key to the end of what is said, or to the next press. */
    KEY,
    /** Always; the talk key stops the voice, and ends an utterance at once. */
    BOTH;

    /** Whether sound is listened to without a key. */
    public boolean byItself() {
        return this != KEY;
    }
}
