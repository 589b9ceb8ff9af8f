/** Recorded sessions made for tests: typed words at stated moments, through the real dialogue, into a real record. */
@org.jspecify.annotations.NullMarked
package readback.assistant.recorded;
