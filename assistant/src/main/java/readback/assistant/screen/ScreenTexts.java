package readback.assistant.screen;

import java.util.Optional;
import readback.prompts.text.Language;

/** The words on the screen that are not the dialogue's, in a language. Immutable. */
public final class ScreenTexts {

    private final Language language;

    public ScreenTexts(Language language) {
        this.language = language;
    }

    /** The text of a key, with {@code {0}}, {@code {1}} ... replaced. */
    public String of(String key, Object... values) {
        return language.label("screen." + key, values);
    }

    /** The text of a key that may be missing. */
    public Optional<String> find(String key) {
        return language.find("screen." + key);
    }
}
