/**
 * Many recorded sessions: listed, chosen, summed, exported. Sessions are taken one at a time, so that memory does not
 * grow with their number. Open {@link readback.assistant.archive.Archive} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.archive;
