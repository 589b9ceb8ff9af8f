package readback.grammar.lexicon;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A set of choices and how its options are said.
 *
 * @param name as in "metering-device"
 * @param anywhere whether an option said alone is understood where the set is not asked
 * @param introductions words after which an option is understood at any step
 * @param overVoice phrases of options that can be said over the program's own voice
 * @param options option name to phrases, in the order of the file
 * @param topics option name to what is asked for by words such as "what's my"
 * @param spots option name to words that mean it wherever they stand
 * @param supposed option name to words that mean it behind "what do i do if"
 */
public record ChoiceSet(
        String name,
        Anywhere anywhere,
        List<Phrase> introductions,
        List<Phrase> overVoice,
        Map<String, List<Phrase>> options,
        Map<String, List<Phrase>> topics,
        Map<String, List<Phrase>> spots,
        Map<String, List<Phrase>> supposed) {

    private static final String TOPIC = "topic ";
    private static final String SPOT = "spot ";
    private static final String SUPPOSED = "if ";

    private static final String INTRODUCE = "introduce";
    private static final String ANYWHERE = "anywhere";
    private static final String OVER = "over";

    /** What becomes of an option that is said alone where its set is not asked. */
    public enum Anywhere {
        /** Nothing: it needs an introduction. */
        NO,
        /** It is spoken of, not chosen: understood, and listened for where no number is asked for. */
        MENTIONED,
        /** It is understood, but the recogniser is not told to expect it. */
        UNDERSTOOD,
        /** It is understood, and listened for where no number is asked for. */
        BETWEEN,
        /** It is understood and listened for. */
        LISTENED
    }

    /** The same set with other options. */
    ChoiceSet with(Map<String, List<Phrase>> others) {
        return new ChoiceSet(name, anywhere, introductions, overVoice, others, topics, spots, supposed);
    }

    static ChoiceSet parse(String name, Map<String, List<String>> section) {
        Map<String, List<Phrase>> options = new LinkedHashMap<>();
        Map<String, List<Phrase>> topics = new LinkedHashMap<>();
        Map<String, List<Phrase>> spots = new LinkedHashMap<>();
        Map<String, List<Phrase>> supposed = new LinkedHashMap<>();
        section.forEach((key, items) -> {
            if (key.startsWith(TOPIC)) {
                topics.put(key.substring(TOPIC.length()), QuantityWords.typed(items));
            } else if (key.startsWith(SPOT)) {
                spots.put(key.substring(SPOT.length()), QuantityWords.typed(items));
            } else if (key.startsWith(SUPPOSED)) {
                supposed.put(key.substring(SUPPOSED.length()), QuantityWords.phrases(items));
            } else if (!key.equals(INTRODUCE) && !key.equals(ANYWHERE) && !key.equals(OVER)) {
                options.put(key, QuantityWords.phrases(items));
            }
        });
        Anywhere anywhere = section.getOrDefault(ANYWHERE, List.of()).stream()
                .findFirst()
                .map(word -> Anywhere.valueOf(word.toUpperCase(Locale.ROOT)))
                .orElse(Anywhere.NO);
        return new ChoiceSet(
                name,
                anywhere,
                QuantityWords.phrases(section.getOrDefault(INTRODUCE, List.of())),
                QuantityWords.phrases(section.getOrDefault(OVER, List.of())),
                options,
                topics,
                spots,
                supposed);
    }
}
