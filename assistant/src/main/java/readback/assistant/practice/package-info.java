/**
 * An apprentice's call at a simulated unit: the world around the ordinary dialogue, and what is said about the call
 * afterwards. Open {@link readback.assistant.practice.World} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.practice;
