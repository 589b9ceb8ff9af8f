/**
 * Live sound in: choosing a microphone by name, reading it on a thread of its own, taking it up again when it was lost,
 * and telling speech from noise by level. What was said is not known here. Open
 * {@link readback.assistant.microphone.MicrophoneReader} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.microphone;
