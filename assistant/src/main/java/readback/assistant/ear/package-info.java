/**
 * From sound to what may have been said: an {@link readback.assistant.ear.Ear} of ours over the recogniser, the
 * acoustic model on disk, and the feeding of audio files. What the words mean is not known here.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.ear;
