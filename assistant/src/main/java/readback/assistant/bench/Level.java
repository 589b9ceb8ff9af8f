package readback.assistant.bench;

/** How much the technician does beyond what he is asked. */
public enum Level {
    /** Reads what the checklist asks and says that the air path is in order without having looked. */
    CHECKLIST,
    /** Looks before he says that the air path is in order, and tells every reading that he can take. */
    FULL
}
