package readback.assistant.echo;

/** There is no echo canceller on this machine; the message is a sentence for the user. */
public final class EchoCancellerUnavailableException extends Exception {
    private static final long serialVersionUID = 1L;

    public EchoCancellerUnavailableException(String message, Throwable cause) {
        super(message, cause);
    }
}
