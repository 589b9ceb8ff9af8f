package readback.assistant.record;

/**
 * Why a record cannot be trusted from a line on.
 *
 * @param line 1 for the header
 * @param sentence for the user, without the line
 */
public record RecordFault(int line, Kind kind, String sentence) {

    /** What happened to the line. */
    public enum Kind {
        /** Its writing was cut off, as by a power failure; everything before it holds. */
        TORN,
        /** Its content does not fit its hash. */
        CHANGED,
        /** It is whole and in place, but holds what no version writes there. */
        ODD,
        /** It is whole, but does not belong after the line before it. */
        MISPLACED,
        /** It is whole and in place, but this version cannot read it. */
        UNREADABLE
    }

    /** What is wrong, and where. */
    @Override
    public String toString() {
        return "line " + line + " " + sentence;
    }
}
