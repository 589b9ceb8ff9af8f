package readback.assistant.probe;

/**
 * One value as an instrument gave it.
 *
 * @param base in kelvins, or pascals as the instrument counts them: gauge or absolute; not finite where no number came
 * @param raw number or registers as they came, and unit
 * @param nanoTime when it was measured, as {@link System#nanoTime} counts
 */
record ProbeSample(double base, String raw, long nanoTime) {}
