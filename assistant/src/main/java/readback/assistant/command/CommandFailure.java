package readback.assistant.command;

/** A command cannot go on. The message is one sentence: what was wrong, what was expected, what to do. */
public final class CommandFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CommandFailure(String sentence) {
        super(sentence);
    }

    CommandFailure(Throwable cause) {
        super(cause.getMessage(), cause);
    }
}
