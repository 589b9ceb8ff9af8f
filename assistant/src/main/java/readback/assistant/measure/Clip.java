package readback.assistant.measure;

import java.nio.file.Path;
import java.util.Optional;
import readback.calc.quantity.Reading;

/**
 * A recording with what is said in it.
 *
 * @param speaker who says it; may be empty
 * @param kind "reading", "number" and "digit" are values, "unrelated" is speech that is not meant for us, anything else
 *     are commands
 * @param step the step at which it is heard; empty to choose by kind
 * @param words what is said; empty for unrelated speech
 * @param meant the value that is said; empty to take what the grammar understands by the words
 */
public record Clip(Path file, String speaker, String kind, String step, String words, Optional<Reading> meant) {

    static final String UNRELATED = "unrelated";

    /** Whether it is speech that is not meant for us. */
    public boolean unrelated() {
        return kind.equals(UNRELATED);
    }

    boolean value() {
        return kind.equals("reading") || kind.equals("number") || kind.equals("digit");
    }
}
