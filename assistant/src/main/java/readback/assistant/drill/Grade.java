package readback.assistant.drill;

/** How well an answer was known, the worst first. */
public enum Grade {
    /** Not known. */
    AGAIN,
    /** Known with trouble: slowly, nearly, or after help. */
    HARD,
    /** Known. */
    GOOD,
    /** Known at once. */
    EASY;

    /** The number that the formulas have for it, 1 to 4. */
    int number() {
        return ordinal() + 1;
    }

    /** Whether it was recalled at all. */
    public boolean recalled() {
        return this != AGAIN;
    }
}
