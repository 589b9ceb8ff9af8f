package readback.assistant.settings;

import java.util.List;

/**
 * One thing that can be set.
 *
 * @param name the command line option without its dashes
 * @param explanation what it does, in lines
 * @param example a value, as it is or as its form
 */
public record Setting(String name, List<String> explanation, String example) {
    public Setting {
        explanation = List.copyOf(explanation);
    }
}
