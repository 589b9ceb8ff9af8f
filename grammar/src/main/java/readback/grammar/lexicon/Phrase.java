package readback.grammar.lexicon;

/**
 * Words that mean something together.
 *
 * @param words lower case, single spaces
 * @param heard whether the recogniser listens for it; false when the acoustic model lacks a word, so that only typed
 *     words can match
 */
public record Phrase(String words, boolean heard) {

    static Phrase of(String item) {
        return item.startsWith("~") ? new Phrase(item.substring(1), false) : new Phrase(item, true);
    }
}
