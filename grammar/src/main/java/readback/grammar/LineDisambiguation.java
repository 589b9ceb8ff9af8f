package readback.grammar;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.lexicon.QuantityWords;

/**
 * What "vapor" and "suction line" are of when no unit is said. A pressure, a temperature and a tube go by the same
 * words, and what was asked decides; where it does not, the reading is left so doubtful that it is asked about. Used by
 * one thread, for one call.
 */
final class LineDisambiguation {

    /** Odd enough to be asked about: below {@code Weighing.NATURAL}. */
    private static final double DOUBTFUL = 0.4;
    /** The asked pressure where the words are the full name of a temperature: "suction line fifty". */
    private static final double LESS_LIKELY = 0.36;

    /**
     * How clearly a reading was named.
     *
     * @param rivalled its words without a unit are also short for a quantity of the kind that was asked for
     * @param shortened its words usually need a unit to mean this quantity, and none was said
     * @param couldBeAsked rivalled by the asked quantity itself, which can have this value
     */
    record Naming(boolean rivalled, boolean shortened, boolean couldBeAsked) {
        static final Naming PLAIN = new Naming(false, false, false);
    }

    private final ParseChart utterance;
    private final Map<Quantity, QuantityWords> quantities;
    /** The quantity asked for, where words can be short for it. */
    private final @Nullable Quantity asked;

    private final boolean pressureAsked;

    LineDisambiguation(ParseChart utterance, Map<Quantity, QuantityWords> quantities) {
        this.utterance = utterance;
        this.quantities = quantities;
        this.asked = askedByShortWords(utterance.expectation(), quantities).orElse(null);
        this.pressureAsked = asked != null && asked.dimension() == Dimension.GAUGE_PRESSURE;
    }

    /** The quantity asked for if words such as "vapor" can be short for it. */
    static Optional<Quantity> askedByShortWords(Expectation expectation, Map<Quantity, QuantityWords> quantities) {
        Optional<Quantity> quantity = expectation.quantity();
        QuantityWords words = quantity.isEmpty() ? null : quantities.get(quantity.get());
        return words == null || words.unitOnlyNames().isEmpty() ? Optional.empty() : quantity;
    }

    /** How clearly a name at a place means its quantity; empty when it cannot be understood so. */
    Optional<Naming> naming(int at, ParseChart.Match match, Item.Name name, Amounts.Amount amount) {
        if (amount.unitSaid() || asked == null) {
            return name.unitOnly() && !amount.unitSaid() ? Optional.empty() : Optional.of(Naming.PLAIN);
        }
        if (name.unitOnly()) {
            return meant(name.words().quantity()) && name.words().canBe(amount.reading())
                    ? Optional.of(new Naming(false, true, false))
                    : Optional.empty();
        }
        boolean rivalled = false;
        boolean couldBeAsked = false;
        for (ParseChart.Match other : utterance.matches(at)) {
            if (other.end() == match.end() && other.item() instanceof Item.Name rival && rival.unitOnly()) {
                Quantity quantity = rival.words().quantity();
                rivalled |= meant(quantity)
                        && quantity.dimension() != name.words().quantity().dimension();
                couldBeAsked |= quantity == asked && canBeAsked(amount.reading());
            }
        }
        return Optional.of(new Naming(rivalled, false, couldBeAsked));
    }

    /** Whether short words can mean this quantity now. A pressure is only short for itself. */
    private boolean meant(Quantity quantity) {
        return asked != null && (pressureAsked ? quantity == asked : quantity.dimension() == asked.dimension());
    }

    private boolean canBeAsked(Reading reading) {
        QuantityWords words = asked == null ? null : quantities.get(asked);
        return asked != null
                && words != null
                && words.canBe(new Reading(asked, reading.value(), utterance.unsaidUnit(asked)));
    }

    /** How natural it is to understand the whole utterance so, as a factor; 0 if it is not. */
    double share(List<Reading> readings, List<Naming> namings) {
        boolean anyShortened = false;
        boolean anyRivalled = false;
        boolean askedNamed = false;
        for (int i = 0; i < readings.size(); i++) {
            Naming naming = namings.get(i);
            anyShortened |= naming.shortened();
            anyRivalled |= naming.rivalled();
            askedNamed |= readings.get(i).quantity() == asked && !naming.shortened();
        }
        if (!anyShortened && !anyRivalled) {
            return 1;
        }
        if (readings.size() > 1) {
            return anyShortened ? 0 : askedNamed || pressureAsked ? 1 : DOUBTFUL;
        }
        if (anyShortened) {
            return pressureAsked ? LESS_LIKELY : readings.get(0).quantity() == asked ? 1 : DOUBTFUL;
        }
        if (!namings.get(0).couldBeAsked()) {
            return pressureAsked ? 1 : DOUBTFUL;
        }
        return pressureAsked ? DOUBTFUL : 0;
    }
}
