/**
 * How well the ear and the grammar do on recordings with known words: error rates by kind and noise level, silent errors,
 * confusions, speed. Open {@link readback.assistant.measure.Measurement} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.measure;
