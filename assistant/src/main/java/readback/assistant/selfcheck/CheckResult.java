package readback.assistant.selfcheck;

/**
 * What was found about one thing.
 *
 * @param subject the thing, in a word or two
 * @param what one sentence with the figures
 * @param todo what to do about it; empty when it is good
 */
public record CheckResult(String subject, Grade grade, String what, String todo) {

    /** How it stands. */
    public enum Grade {
        GOOD,
        /** Works, but may trouble the work. */
        DOUBTFUL,
        BAD
    }

    static CheckResult good(String subject, String what) {
        return new CheckResult(subject, Grade.GOOD, what, "");
    }

    static CheckResult doubtful(String subject, String what, String todo) {
        return new CheckResult(subject, Grade.DOUBTFUL, what, todo);
    }

    static CheckResult bad(String subject, String what, String todo) {
        return new CheckResult(subject, Grade.BAD, what, todo);
    }
}
