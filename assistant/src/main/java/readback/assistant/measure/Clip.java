package readback.assistant.measure;

import java.nio.file.Path;

/**
 * A recording with what is said in it.
 *
 * @param kind "number" and "digit" are values, "unrelated" is speech that is not meant for us, anything else are commands
 * @param step the step at which it is heard; empty to choose by kind
 * @param words what is said; empty for unrelated speech
 */
public record Clip(Path file, String kind, String step, String words) {

    static final String UNRELATED = "unrelated";

    /** Whether it is speech that is not meant for us. */
    public boolean unrelated() {
        return kind.equals(UNRELATED);
    }

    boolean value() {
        return kind.equals("number") || kind.equals("digit");
    }
}
