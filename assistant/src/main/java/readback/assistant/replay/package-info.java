/**
 * Recorded sessions played again: through the same pure dialogue, compared with what was recorded, shown as they
 * unfolded. No file is read here. Open {@link readback.assistant.replay.Replay} and
 * {@link readback.assistant.replay.Verification} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.replay;
