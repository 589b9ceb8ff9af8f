package readback.assistant.settings;

/** The settings cannot be used; the message says where and why, in one sentence. */
public final class SettingsException extends Exception {

    private static final long serialVersionUID = 1L;

    public SettingsException(String sentence) {
        super(sentence);
    }

    public SettingsException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
