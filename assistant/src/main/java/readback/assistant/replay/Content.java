package readback.assistant.replay;

import java.math.BigDecimal;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.prompts.text.Fact;

/** What a slot holds, as a record writes it: "118 psig", "R-410A", "done". */
public final class Content {

    private Content() {}

    /** The quantity whose readings fill a slot; empty for choices and questions. */
    public static Optional<Quantity> quantity(String slot) {
        for (Quantity quantity : Quantity.values()) {
            if (quantity.name().equals(slot)) {
                return Optional.of(quantity);
            }
        }
        return Optional.empty();
    }

    /** The reading that the content states; empty when it states none, as "skipped" does. */
    public static Optional<Reading> reading(String slot, String content) {
        int space = content.indexOf(' ');
        Optional<Quantity> quantity = quantity(slot);
        if (space < 1 || quantity.isEmpty()) {
            return Optional.empty();
        }
        String symbol = content.substring(space + 1);
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(symbol)
                    && unit.dimension() == quantity.get().dimension()) {
                return number(content.substring(0, space)).map(value -> new Reading(quantity.get(), value, unit));
            }
        }
        return Optional.empty();
    }

    /** The content as a reader has it: "7.25 lb+oz" is "7 lb 4 oz"; everything else stays as it is. */
    public static String shown(String content) {
        String end = " " + Unit.POUND_AND_OUNCES.symbol();
        return Optional.of(content)
                .filter(text -> text.endsWith(end))
                .flatMap(text -> number(text.substring(0, text.length() - end.length())))
                .map(value -> new Fact.Amount(value, Unit.POUND_AND_OUNCES).shown())
                .orElse(content);
    }

    private static Optional<BigDecimal> number(String text) {
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
