package readback.grammar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.Unit;
import readback.grammar.lexicon.ChoiceSet;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.Phrase;
import readback.grammar.lexicon.QuantityWords;

/** Every phrase of the lexicon, word by word, so that all phrases that start at a word are found in one walk. */
final class PhraseTree {

    private static final double WEAK = 0.7;

    private final Node root = new Node();
    private final Set<String> known = new HashSet<>();

    static final class Node {
        private final Map<String, Node> next = new HashMap<>();
        private final List<Item> items = new ArrayList<>();

        @Nullable Node after(String word) {
            return next.get(word);
        }

        List<Item> items() {
            return items;
        }
    }

    PhraseTree(Lexicon lexicon) {
        for (QuantityWords words : lexicon.quantities().values()) {
            put(words.names(), new Item.Name(words, 1, false));
            put(words.weakNames(), new Item.Name(words, WEAK, false));
            put(words.unitOnlyNames(), new Item.Name(words, 1, true));
        }
        for (Map.Entry<Unit, List<Phrase>> unit : lexicon.units().entrySet()) {
            put(unit.getValue(), new Item.UnitName(unit.getKey()));
        }
        put(lexicon.defaultUnit(), new Item.DefaultUnit());
        lexicon.choices().forEach((name, set) -> {
            put(set.introductions(), new Item.Introduction(name));
            set.options().forEach((option, phrases) -> {
                ChoiceSet.Anywhere alone =
                        option.equals(Understanding.UNKNOWN) ? ChoiceSet.Anywhere.NO : set.anywhere();
                put(phrases, new Item.Option(name, option, alone));
            });
        });
        lexicon.choices().forEach((name, set) -> {
            set.topics().forEach((option, phrases) -> put(phrases, new Item.Topic(name, option)));
            boolean anywhere = set.anywhere() != ChoiceSet.Anywhere.NO;
            set.spots().forEach((option, phrases) -> put(phrases, new Item.Spot(name, option, anywhere, false)));
            set.supposed().forEach((option, phrases) -> put(phrases, new Item.Spot(name, option, anywhere, true)));
        });
        lexicon.commands().forEach((name, phrases) -> put(phrases, new Item.Order(Command.valueOf(name))));
        lexicon.commandsAbout().forEach((name, phrases) -> put(phrases, new Item.OrderAbout(Command.valueOf(name))));
        for (Item.Word word : Item.Word.values()) {
            put(lexicon.smallWords(word.name().toLowerCase(Locale.ROOT)), new Item.Small(word));
        }
    }

    Node root() {
        return root;
    }

    private void put(List<Phrase> phrases, Item item) {
        for (Phrase phrase : phrases) {
            Node node = root;
            for (String word : phrase.words().split(" ", -1)) {
                known.add(word);
                node = node.next.computeIfAbsent(word, key -> new Node());
            }
            node.items.add(item);
        }
    }

    /**
     * Whether the name of a quantity that is no unit ("microns") stands anywhere among these words, which are separated
     * by single spaces.
     */
    boolean holdsName(String words) {
        List<String> tokens = List.of(words.split(" ", -1));
        for (int from = 0; from < tokens.size(); from++) {
            @Nullable Node node = root.after(tokens.get(from));
            for (int at = from + 1; node != null; at++) {
                boolean unit = node.items().stream().anyMatch(Item.UnitName.class::isInstance);
                if (!unit && node.items().stream().anyMatch(Item.Name.class::isInstance)) {
                    return true;
                }
                node = at < tokens.size() ? node.after(tokens.get(at)) : null;
            }
        }
        return false;
    }

    /** Whether any phrase has this word. */
    boolean knows(String word) {
        return known.contains(word);
    }
}
