/**
 * A session with a person in front of it: microphone, voice, keys and timers become one queue of inputs, and one thread
 * owns everything that they change. Open {@link readback.assistant.live.LiveSession} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.live;
