/**
 * What a technician sees and touches: one immutable {@link readback.assistant.screen.View} of a session, laid out for
 * the size of the terminal and drawn whole, and the keys and touches that come back. Nothing is decided here. Open
 * {@link readback.assistant.screen.View} first, then {@link readback.assistant.screen.Layout}.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.screen;
