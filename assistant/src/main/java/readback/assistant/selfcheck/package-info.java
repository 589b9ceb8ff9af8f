/**
 * Whether this machine can do the job: Java, recogniser, microphone, voice, disk, one finding each with what to do.
 * Open {@link readback.assistant.selfcheck.SelfCheck} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.selfcheck;
