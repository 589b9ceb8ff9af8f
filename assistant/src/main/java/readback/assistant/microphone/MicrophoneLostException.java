package readback.assistant.microphone;

/** There is no sound to be had from the microphone; the message is one sentence for the user. */
public final class MicrophoneLostException extends Exception {

    private static final long serialVersionUID = 1L;

    public MicrophoneLostException(String sentence) {
        super(sentence);
    }

    public MicrophoneLostException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
