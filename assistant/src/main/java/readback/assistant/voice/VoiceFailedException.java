package readback.assistant.voice;

/** A voice cannot be had or failed to speak; the message is one sentence that says why and what to do. */
public final class VoiceFailedException extends Exception {
    private static final long serialVersionUID = 1L;

    public VoiceFailedException(String sentence) {
        super(sentence);
    }

    public VoiceFailedException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
