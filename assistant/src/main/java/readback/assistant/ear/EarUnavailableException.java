package readback.assistant.ear;

/** There is nothing to listen with; the message is one sentence for the user that says why and what to do. */
public final class EarUnavailableException extends Exception {
    private static final long serialVersionUID = 1L;

    public EarUnavailableException(String sentence) {
        super(sentence);
    }

    public EarUnavailableException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
