package readback.grammar;

import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import readback.grammar.lexicon.ChoiceSet;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.Phrase;

/** The sets of choices that can be asked for, by name, with their options. Immutable. */
public final class Choices {

    private final Lexicon lexicon;

    Choices(Lexicon lexicon) {
        this.lexicon = lexicon;
    }

    /** The names of the sets, as in "metering-device". */
    public SortedSet<String> sets() {
        return new TreeSet<>(lexicon.choices().keySet());
    }

    /**
     * The options of a set in the order of the definition, as in "piston".
     *
     * @throws IllegalArgumentException if there is no such set
     */
    public Set<String> options(String set) {
        return of(set).options().keySet();
    }

    /**
     * The ways in which an option is said, the usual one first.
     *
     * @throws IllegalArgumentException if there is no such set or option
     */
    public List<String> phrases(String set, String option) {
        List<Phrase> phrases = of(set).options().get(option);
        if (phrases == null) {
            throw new IllegalArgumentException("the choice " + set + " has no option " + option);
        }
        return phrases.stream().map(Phrase::words).toList();
    }

    private ChoiceSet of(String set) {
        ChoiceSet choice = lexicon.choices().get(set);
        if (choice == null) {
            throw new IllegalArgumentException("there is no set of choices " + set + ", only " + sets());
        }
        return choice;
    }
}
