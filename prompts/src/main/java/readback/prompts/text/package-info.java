/**
 * Language: one catalogue of everything said and shown, filled with typed facts, in a form for the ear and a form for
 * the eye. Numbers for the ear follow radio practice, digit by digit. Open {@link readback.prompts.text.Language}
 * first.
 */
@org.jspecify.annotations.NullMarked
package readback.prompts.text;
