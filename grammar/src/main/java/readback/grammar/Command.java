package readback.grammar;

/** What can be said at any moment, whatever was asked. */
public enum Command {
    YES,
    NO,
    SAY_AGAIN,
    WHY,
    HOW,
    HELP,
    GO_BACK,
    SCRATCH_THAT,
    HOLD_ON,
    CARRY_ON,
    WHERE_ARE_WE,
    READ_READINGS,
    /** What was worked out from the readings, with its uncertainty. */
    READ_NUMBERS,
    STOP_TALKING,
    FINISH,
    /** Full sentences, every step. */
    GUIDE,
    /** Values and verdicts only. */
    BRIEF,
    /** Leave the asked step open and go on. */
    SKIP,
    /** A step is done, a caution was understood. */
    DONE,
    /** The asked value cannot be known. */
    UNKNOWN,
    /** Speak up. */
    LOUDER,
    /** Speak less loudly. */
    QUIETER,
    /** Speak more quickly. */
    FASTER,
    /** Speak more slowly. */
    SLOWER,
    /** Begin the whole check again. */
    START_OVER,
    /** Measure before the waiting is over, or again. */
    MEASURE_NOW,
    /** Take the value that a probe offers. */
    TAKE
}
