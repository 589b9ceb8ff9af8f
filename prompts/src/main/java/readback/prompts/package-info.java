/** Placeholder. */
@org.jspecify.annotations.NullMarked
package readback.prompts;
