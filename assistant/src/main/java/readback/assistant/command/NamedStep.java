package readback.assistant.command;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.calc.name.ConstantName;
import readback.calc.name.EditDistance;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;

/** Steps named on the command line. */
final class NamedStep {

    /** So many names are offered for one that there is not. */
    private static final int NEAREST = 4;

    private NamedStep() {}

    /** The situation in which a quantity or a choice set is asked for; an empty name is the open one. */
    static Expectation expectation(String name, UnitSetting units, Grammar grammar) {
        if (name.isEmpty()) {
            return Expectation.open(units);
        }
        Optional<Quantity> quantity = ConstantName.find(Quantity.class, name);
        if (quantity.isPresent()) {
            return Expectation.of(quantity.get(), units);
        }
        if (grammar.choices().sets().contains(name)) {
            return new Expectation(name, Optional.empty(), Optional.of(name), Optional.empty(), units);
        }
        throw new CommandFailure("There is no step '" + name + "'. A step is a quantity, as in "
                + String.join(
                        ", ", nearest(name, Arrays.stream(Quantity.values()).map(ConstantName::of)))
                + ", or a choice: " + String.join(", ", grammar.choices().sets()) + ".");
    }

    private static List<String> nearest(String word, Stream<String> names) {
        return names.sorted(Comparator.comparingInt((String name) -> EditDistance.between(word, name)))
                .limit(NEAREST)
                .toList();
    }
}
