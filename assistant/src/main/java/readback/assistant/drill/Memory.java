package readback.assistant.drill;

/**
 * How firmly a skill is remembered, by the model FSRS-6 of Open Spaced Repetition (formulas and default weights
 * published under the MIT licence), which goes back to Ye, Su and Cao, "A Stochastic Shortest Path Algorithm for
 * Optimizing Spaced Repetition Scheduling", KDD 2022, doi 10.1145/3534678.3539081. Immutable.
 *
 * @param stability days after which it is still recalled nine times in ten, over 0
 * @param difficulty 1 to 10
 */
public record Memory(double stability, double difficulty) {

    /** Share of reviews in which a skill should still be known. */
    public static final double RETENTION = 0.9;

    /** The longest pause, days. */
    public static final int LONGEST = 36_500;

    /** The default weights of FSRS-6, w0 to w20. */
    private static final double[] W = {
        0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
        1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542
    };

    private static final double DECAY = -W[20];
    private static final double FACTOR = Math.pow(RETENTION, 1 / DECAY) - 1;
    private static final double LEAST_STABILITY = 0.001;
    private static final double LEAST_DIFFICULTY = 1;
    private static final double MOST_DIFFICULTY = 10;

    /** What the first answer to a skill leaves behind. */
    public static Memory first(Grade grade) {
        return new Memory(W[grade.number() - 1], clamped(firstDifficulty(grade)));
    }

    /**
     * What an answer leaves behind.
     *
     * @param days since the answer before, zero or more
     */
    public Memory after(Grade grade, double days) {
        return new Memory(Math.max(LEAST_STABILITY, nextStability(grade, days)), nextDifficulty(grade));
    }

    /**
     * How likely it is still known, 0 to 1.
     *
     * @param days since the last answer, zero or more
     */
    public double retrievability(double days) {
        return Math.pow(1 + FACTOR * days / stability, DECAY);
    }

    /** Days until it is known with the share wanted, {@value #RETENTION} of the time; 1 to {@link #LONGEST}. */
    public int interval() {
        // the factor is chosen so that the stability itself is the time to this share
        return (int) Math.max(1, Math.min(LONGEST, Math.rint(stability)));
    }

    private double nextStability(Grade grade, double days) {
        if (days < 1) {
            return sameDay(grade);
        }
        double known = retrievability(days);
        if (!grade.recalled()) {
            double forgotten = W[11]
                    * Math.pow(difficulty, -W[12])
                    * (Math.pow(stability + 1, W[13]) - 1)
                    * Math.exp(W[14] * (1 - known));
            return Math.min(forgotten, stability / Math.exp(W[17] * W[18]));
        }
        double bonus = grade == Grade.HARD ? W[15] : grade == Grade.EASY ? W[16] : 1;
        double growth = Math.exp(W[8])
                * (11 - difficulty)
                * Math.pow(stability, -W[9])
                * (Math.exp(W[10] * (1 - known)) - 1)
                * bonus;
        return stability * (1 + growth);
    }

    private double sameDay(Grade grade) {
        double growth = Math.exp(W[17] * (grade.number() - 3 + W[18])) * Math.pow(stability, -W[19]);
        return stability * (grade.number() >= Grade.GOOD.number() ? Math.max(1, growth) : growth);
    }

    private double nextDifficulty(Grade grade) {
        double by = -W[6] * (grade.number() - 3);
        double moved = difficulty + (MOST_DIFFICULTY - difficulty) * by / 9;
        return clamped(W[7] * firstDifficulty(Grade.EASY) + (1 - W[7]) * moved);
    }

    private static double firstDifficulty(Grade grade) {
        return W[4] - Math.exp(W[5] * (grade.number() - 1)) + 1;
    }

    private static double clamped(double difficulty) {
        return Math.max(LEAST_DIFFICULTY, Math.min(MOST_DIFFICULTY, difficulty));
    }
}
