package readback.grammar;

/**
 * One way to understand an utterance.
 *
 * @param score 0 to 1, how natural this way of saying the meaning is; comparable within one call only
 */
public record Interpretation(Meaning meaning, double score) {}
