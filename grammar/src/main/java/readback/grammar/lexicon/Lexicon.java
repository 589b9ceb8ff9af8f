package readback.grammar.lexicon;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import readback.calc.fluid.Catalogue;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;

/**
 * Every definition of the module, in the order of its files.
 *
 * @param quantities every quantity, without exception
 * @param units how each unit is said
 * @param defaultUnit words for the unit of the settings: "degrees"
 * @param choices by set name
 * @param commands command name to the phrases of its key "say"
 * @param commandsAbout command name to phrases that take the name of a quantity
 * @param overVoice phrases of commands and choices that can be said over the program's own voice
 * @param small the small words, by their key
 */
public record Lexicon(
        Map<Quantity, QuantityWords> quantities,
        Map<Unit, List<Phrase>> units,
        List<Phrase> defaultUnit,
        Map<String, ChoiceSet> choices,
        Map<String, List<Phrase>> commands,
        Map<String, List<Phrase>> commandsAbout,
        List<Phrase> overVoice,
        Map<String, List<Phrase>> small) {

    private static final String DEFAULT = "DEFAULT";

    /**
     * The definitions in this module's resources, and calc's refrigerants.
     *
     * @param heard every word that can be heard
     */
    public static Lexicon standard(Set<String> heard) {
        Map<Quantity, QuantityWords> quantities = new EnumMap<>(Quantity.class);
        Definitions quantityFile = Definitions.load("quantities.txt");
        for (Quantity quantity : Quantity.values()) {
            quantities.put(quantity, QuantityWords.parse(quantityFile, quantity));
        }
        Map<Unit, List<Phrase>> units = new EnumMap<>(Unit.class);
        Definitions unitFile = Definitions.load("units.txt");
        unitFile.sections().getOrDefault("", Map.of()).forEach((name, items) -> {
            if (!name.equals(DEFAULT)) {
                units.put(Unit.valueOf(name), QuantityWords.phrases(items));
            }
        });
        Map<String, ChoiceSet> choices = new LinkedHashMap<>();
        Definitions.load("choices.txt").sections().forEach((name, section) -> {
            if (!name.isEmpty()) {
                ChoiceSet set = ChoiceSet.parse(name, section);
                choices.put(
                        name,
                        name.equals(RefrigerantNames.SET)
                                ? set.with(RefrigerantNames.of(Catalogue.standard(), heard))
                                : set);
            }
        });
        Map<String, List<Phrase>> commands = new LinkedHashMap<>();
        Map<String, List<Phrase>> about = new LinkedHashMap<>();
        List<Phrase> overVoice = new ArrayList<>();
        choices.values().forEach(set -> overVoice.addAll(set.overVoice()));
        Definitions commandFile = Definitions.load("commands.txt");
        for (String name : commandFile.sections().keySet()) {
            if (!name.isEmpty()) {
                commands.put(name, QuantityWords.phrases(commandFile.required(name, "say")));
                about.put(name, QuantityWords.phrases(commandFile.items(name, "about")));
                overVoice.addAll(QuantityWords.phrases(commandFile.items(name, "over")));
            }
        }
        Map<String, List<Phrase>> small = new LinkedHashMap<>();
        Definitions.load("speech.txt")
                .sections()
                .values()
                .forEach(section -> section.forEach((key, items) -> small.put(key, QuantityWords.phrases(items))));
        return new Lexicon(
                quantities,
                units,
                QuantityWords.phrases(unitFile.required("", DEFAULT)),
                choices,
                commands,
                about,
                overVoice,
                small);
    }

    /** How a quantity is named and stated. */
    public QuantityWords words(Quantity quantity) {
        QuantityWords words = quantities.get(quantity);
        if (words == null) {
            throw new IllegalStateException("no definition of " + quantity);
        }
        return words;
    }

    /** The small words of a key that must be there. */
    public List<Phrase> smallWords(String key) {
        List<Phrase> phrases = small.get(key);
        if (phrases == null) {
            throw new IllegalStateException("speech.txt lacks \"" + key + "\"");
        }
        return phrases;
    }
}
