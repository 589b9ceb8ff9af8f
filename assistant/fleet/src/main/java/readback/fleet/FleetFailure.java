package readback.fleet;

/** A command of the fleet cannot go on. The message is one sentence: what was wrong, what was expected, what to do. */
final class FleetFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    FleetFailure(String sentence) {
        super(sentence);
    }

    FleetFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
