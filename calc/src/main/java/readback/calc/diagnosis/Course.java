package readback.calc.diagnosis;

/** What moving refrigerant did so far. */
public enum Course {
    /** Nothing was moved yet. */
    BEGINNING,
    /** What was moved changed the value as a wrong charge would have it, or not clearly. */
    UNDER_WAY,
    /** It changed the value the wrong way. */
    CONTRARY
}
