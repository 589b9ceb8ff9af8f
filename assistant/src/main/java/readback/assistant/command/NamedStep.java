package readback.assistant.command;

import java.util.Arrays;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;

/** Steps named on the command line. */
final class NamedStep {

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
        throw new CommandFailure("There is no step '" + name + "'. Quantities: "
                + String.join(
                        ", ",
                        Arrays.stream(Quantity.values()).map(ConstantName::of).toList())
                + ". Choices: " + String.join(", ", grammar.choices().sets()) + ".");
    }
}
