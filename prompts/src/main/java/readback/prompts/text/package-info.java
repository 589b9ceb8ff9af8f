/**
 * Wording: one catalogue of texts, filled with typed facts, in a form for the ear and a form for the eye. Numbers for
 * the ear follow radio practice, digit by digit. Open {@link readback.prompts.text.Wording} first.
 */
@org.jspecify.annotations.NullMarked
package readback.prompts.text;
