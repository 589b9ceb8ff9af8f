/**
 * The session record: an append-only file of JSON lines, each chained to the one before by hash, on disk before
 * anything is acknowledged. Open {@link readback.assistant.record.SessionRecord} to write and
 * {@link readback.assistant.record.RecordedSession} to read.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.record;
