package readback.grammar.lexicon;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A set of choices and how its options are said.
 *
 * @param name as in "metering-device"
 * @param introductions words after which an option is understood at any step
 * @param options option name to phrases, in the order of the file
 */
public record ChoiceSet(String name, List<Phrase> introductions, Map<String, List<Phrase>> options) {

    /** The same set with other options. */
    ChoiceSet with(Map<String, List<Phrase>> others) {
        return new ChoiceSet(name, introductions, others);
    }

    static ChoiceSet parse(String name, Map<String, List<String>> section) {
        Map<String, List<Phrase>> options = new LinkedHashMap<>();
        section.forEach((key, items) -> {
            if (!key.equals("introduce")) {
                options.put(key, QuantityWords.phrases(items));
            }
        });
        return new ChoiceSet(name, QuantityWords.phrases(section.getOrDefault("introduce", List.of())), options);
    }
}
