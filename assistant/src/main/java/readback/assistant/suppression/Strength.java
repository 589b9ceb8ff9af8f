package readback.assistant.suppression;

/** How much of the noise is taken away, at the cost of what is taken from speech. */
public enum Strength {
    LOW,
    MODERATE,
    HIGH
}
