package readback.assistant.screen;

import java.util.Optional;
import readback.prompts.text.Language;

/** The words on the screen that are not the dialogue's, in a language. Immutable. */
public final class ScreenTexts {

    private static final String PREFIX = "screen.";

    private final Language language;
    private final String own;

    /** The words of a session. */
    public ScreenTexts(Language language) {
        this(language, PREFIX);
    }

    private ScreenTexts(Language language, String own) {
        this.language = language;
        this.own = own;
    }

    /** The words while a tablet is set up: those of a session where there are no others. */
    public static ScreenTexts ofSetup(Language language) {
        return new ScreenTexts(language, PREFIX + "setup.");
    }

    /** The text of a key, with {@code {0}}, {@code {1}} ... replaced. */
    public String of(String key, Object... values) {
        return language.label(language.find(own + key).isPresent() ? own + key : PREFIX + key, values);
    }

    /** The text of a key that may be missing. */
    public Optional<String> find(String key) {
        return language.find(own + key).or(() -> language.find(PREFIX + key));
    }
}
