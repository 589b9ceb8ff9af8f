/**
 * How well the ear and the grammar do on recordings with known words: error rates by kind and noise level, silent
 * errors, words accepted from unrelated speech, confusions, latency, speed; and what a session takes while nobody
 * speaks to it. Open {@link readback.assistant.measure.Measurement} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.measure;
