package readback.assistant.drill;

/** How well an answer was known, the worst first. */
public enum Grade {
    /** Not known. */
    AGAIN(1),
    /** Known with trouble: slowly, nearly, or after help. */
    HARD(2),
    /** Known. */
    GOOD(3),
    /** Known at once. */
    EASY(4);

    private final int number;

    Grade(int number) {
        this.number = number;
    }

    /** The number that the formulas have for it, 1 to 4. */
    int number() {
        return number;
    }

    /** Whether it was recalled at all. */
    public boolean recalled() {
        return this != AGAIN;
    }
}
