/**
 * Which cautions were given, and which are due now. Nothing here knows a state of the dialogue; which caution a
 * situation calls for is known by {@link readback.calc.caution}.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.dialogue.caution;
