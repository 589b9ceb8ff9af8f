package readback.assistant.suppression;

/** There is no noise suppressor on this machine; the message is a sentence for the user. */
public final class NoiseSuppressorUnavailableException extends Exception {
    private static final long serialVersionUID = 1L;

    public NoiseSuppressorUnavailableException(String message, Throwable cause) {
        super(message, cause);
    }
}
