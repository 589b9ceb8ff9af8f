package readback.assistant.probe;

/** A mapping of probes that cannot be used. The message is for the user: where, what is wrong, what was expected. */
public final class MappingException extends Exception {

    private static final long serialVersionUID = 1L;

    MappingException(String message) {
        super(message);
    }

    MappingException(String message, Exception cause) {
        super(message, cause);
    }
}
