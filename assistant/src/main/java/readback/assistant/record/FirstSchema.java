package readback.assistant.record;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Understood;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Command;
import readback.grammar.Meaning;

/**
 * Reads what records of the first schema kept as a line of text. Nothing is written in this form any more; what cannot
 * be told from the line, as the words that were not understood, stays empty.
 */
final class FirstSchema {

    static final int NUMBER = 1;

    private static final String BETWEEN = "between [";
    private static final String IGNORED = "ignored: ";
    private static final String TIMER = "timer ";
    private static final String NOT_UNDERSTOOD = "not understood: ";
    private static final String NOTE = "note: ";
    private static final String CORRECTION = "correction: ";
    private static final String SATURATION = "saturation at ";

    private FirstSchema() {}

    static Understood understood(String line) {
        for (Understood.Occurrence occurrence : Understood.Occurrence.values()) {
            if (occurrence.line().equals(line)) {
                return occurrence;
            }
        }
        if (line.startsWith(TIMER)) {
            return new Understood.Elapsed(line.substring(TIMER.length()));
        }
        if (line.startsWith(IGNORED)) {
            return new Understood.Ignored(line.substring(IGNORED.length()));
        }
        if (line.startsWith(BETWEEN)) {
            return new Understood.Between(Arrays.stream(
                            line.substring(BETWEEN.length(), line.length() - 1).split(", ", -1))
                    .map(FirstSchema::meaning)
                    .toList());
        }
        return new Understood.Meant(meaning(line));
    }

    private static Meaning meaning(String line) {
        if (line.startsWith(NOT_UNDERSTOOD)) {
            return new Meaning.NotUnderstood("", line.substring(NOT_UNDERSTOOD.length()));
        }
        if (line.startsWith(NOTE)) {
            return new Meaning.Note(line.substring(NOTE.length()));
        }
        if (line.startsWith(CORRECTION)) {
            return new Meaning.Correction(readings(line.substring(CORRECTION.length())));
        }
        if (line.startsWith(SATURATION)) {
            return new Meaning.SaturationQuestion(
                    readings(line.substring(SATURATION.length())).get(0));
        }
        Optional<Meaning.Ordered> order = order(line);
        if (order.isPresent()) {
            return order.get();
        }
        int colon = line.indexOf(": ");
        return colon > 0
                ? new Meaning.Choice(line.substring(0, colon), line.substring(colon + 2))
                : new Meaning.Values(readings(line));
    }

    private static Optional<Meaning.Ordered> order(String line) {
        String[] words = line.split(" ", 2);
        for (Command command : Command.values()) {
            if (ConstantName.of(command).equals(words[0])) {
                return words.length == 1
                        ? Optional.of(new Meaning.Ordered(command))
                        : quantity(words[1]).map(about -> new Meaning.Ordered(command, Optional.of(about)));
            }
        }
        return Optional.empty();
    }

    private static List<Reading> readings(String line) {
        List<Reading> readings = new ArrayList<>();
        for (String part : line.split(", ", -1)) {
            String[] words = part.split(" ", 3);
            Quantity quantity = words.length < 3 ? null : quantity(words[0]).orElse(null);
            if (quantity == null) {
                throw new IllegalArgumentException("no reading: \"" + part + "\"");
            }
            readings.add(new Reading(quantity, new BigDecimal(words[1]), unit(quantity, words[2])));
        }
        return readings;
    }

    private static Optional<Quantity> quantity(String name) {
        return ConstantName.find(Quantity.class, name);
    }

    private static Unit unit(Quantity quantity, String symbol) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.symbol().equals(symbol) && unit.dimension() == quantity.dimension())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit: \"" + symbol + "\""));
    }
}
