package readback.assistant.dialogue;

/** How much the technician is told about the work. Cautions are told to everybody. */
public enum Tutor {
    /** Everything, and unasked what helps. */
    GUIDE,
    /**
     * Nothing that is worked out, nothing about how and why, until the technician has said his own verdict; then
     * everything.
     */
    EXAMINER
}
