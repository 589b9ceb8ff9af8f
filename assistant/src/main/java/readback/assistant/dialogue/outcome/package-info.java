/**
 * What a job came to, as a type and in words. Open {@link readback.assistant.dialogue.outcome.JobOutcome} first.
 * Nothing here knows a state: what is judged, and when, is decided by the dialogue.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.dialogue.outcome;
