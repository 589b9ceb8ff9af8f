package readback.assistant.record;

/** The record cannot be kept or read. The message is one sentence for the user: what is wrong and what to do. */
public final class RecordUnavailableException extends Exception {

    private static final long serialVersionUID = 1L;

    public RecordUnavailableException(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    public RecordUnavailableException(String sentence) {
        super(sentence);
    }
}
