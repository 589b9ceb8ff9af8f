package readback.assistant.voice;

/** Sound cannot be made audible; the message is one sentence for the user. */
public final class LoudspeakerLostException extends Exception {

    private static final long serialVersionUID = 1L;

    public LoudspeakerLostException(String sentence) {
        super(sentence);
    }

    public LoudspeakerLostException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
