package readback.assistant.webrtc;

/** There is no such audio processing on this machine; the message is a sentence for the user. */
public final class ProcessingUnavailableException extends Exception {
    private static final long serialVersionUID = 1L;

    public ProcessingUnavailableException(String message, Throwable cause) {
        super(message, cause);
    }
}
