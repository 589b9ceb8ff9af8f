/**
 * Sound as samples: what the ear is fed with and what the voice makes, in memory and in wave files. No microphone, no
 * loudspeaker and no recogniser lives here.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.sound;
