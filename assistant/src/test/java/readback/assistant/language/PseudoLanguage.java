package readback.assistant.language;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import readback.prompts.text.Language;

/**
 * A language that nobody speaks, made from English by program: every letter of every text is a Cyrillic one in its
 * place, in brackets. What reaches a reader in Latin letters then did not come through the door.
 */
final class PseudoLanguage {

    /** Places for facts, which every language keeps. */
    private static final Pattern PLACE = Pattern.compile("\\{[a-z0-9]+}");

    private PseudoLanguage() {}

    static Language language() {
        Map<String, String> texts = new TreeMap<>();
        Language.english().texts().forEach((key, text) -> texts.put(key, changed(key, text)));
        return Language.of("xx", texts);
    }

    /** Patterns of moments stay, and so do words that a touch or a key says to the grammar. */
    private static String changed(String key, String text) {
        boolean kept = key.startsWith("format.") || key.endsWith(".words") || text.isEmpty();
        return kept ? text : "⟦" + foreign(text) + "⟧";
    }

    private static String foreign(String text) {
        StringBuilder out = new StringBuilder();
        Matcher places = PLACE.matcher(text);
        int from = 0;
        while (places.find()) {
            out.append(letters(text.substring(from, places.start()))).append(places.group());
            from = places.end();
        }
        return out.append(letters(text.substring(from))).toString();
    }

    private static String letters(String text) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(c -> {
            if (c >= 'a' && c <= 'z') {
                out.append((char) ('а' + c - 'a'));
            } else if (c >= 'A' && c <= 'Z') {
                out.append((char) ('А' + c - 'A'));
            } else {
                out.append((char) c);
            }
        });
        return out.toString();
    }
}
