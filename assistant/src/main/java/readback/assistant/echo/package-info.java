/**
 * Hearing while speaking: takes Readback's own voice out of what the microphone hears, well enough for a short order,
 * not for a reading. What is done with the orders is for the live session.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.echo;
