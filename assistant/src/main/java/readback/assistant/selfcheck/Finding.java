package readback.assistant.selfcheck;

/**
 * What was found about one thing.
 *
 * @param subject the thing, in a word or two
 * @param what one sentence with the figures
 * @param todo what to do about it; empty when it is good
 */
public record Finding(String subject, Grade grade, String what, String todo) {

    /** How it stands. */
    public enum Grade {
        GOOD,
        /** Works, but may trouble the work. */
        DOUBTFUL,
        BAD
    }

    static Finding good(String subject, String what) {
        return new Finding(subject, Grade.GOOD, what, "");
    }

    static Finding doubtful(String subject, String what, String todo) {
        return new Finding(subject, Grade.DOUBTFUL, what, todo);
    }

    static Finding bad(String subject, String what, String todo) {
        return new Finding(subject, Grade.BAD, what, todo);
    }
}
