/**
 * The dialogue: a pure function from a state and an event to a new state and effects. No clock, thread, sound or file
 * is touched here; live, recorded, typed and replayed sessions all use this one function. Open
 * {@link readback.assistant.dialogue.Dialogue} first. What a job came to, and which cautions are given, have rooms of
 * their own, which do not know the dialogue.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.dialogue;
