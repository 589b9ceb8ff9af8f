package readback.assistant.dialogue.outcome;

import java.math.BigDecimal;
import java.math.RoundingMode;
import readback.calc.plausibility.Grade;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Why a value is refused or asked about. */
public final class Objections {

    private final UnitSetting units;

    public Objections(UnitSetting units) {
        this.units = units;
    }

    public Message refusal(Reading reading, Grade.Refusal refusal) {
        Message message = refusal instanceof Grade.Refusal.OutsidePossible outside
                ? limits("refused.outside", outside.possible(), reading)
                : Message.of("refused.unphysical");
        return message.with("value", new Fact.Stated(reading));
    }

    public Message question(Reading reading, Grade.Doubt doubt) {
        Message why = doubt.fold(
                outside -> limits("doubt." + (outside.above() ? "above" : "below"), outside.usual(), reading),
                contradicts -> new JudgementMessages(units).contradiction(contradicts.contradiction()));
        return Message.of("confirm.unusual")
                .with("value", new Fact.Stated(reading))
                .with("why", new Fact.Text(why));
    }

    public static Message weaklyHeard(Reading reading) {
        return Message.of("confirm.weak").with("value", new Fact.Stated(reading));
    }

    private Message limits(String key, Grade.Span span, Reading reading) {
        return Message.of(key)
                .with("low", limit(span.low(), span, reading))
                .with("high", limit(span.high(), span, reading));
    }

    /** A limit in the unit that the technician used, to a whole number. */
    private static Fact limit(double value, Grade.Span span, Reading reading) {
        Unit unit = reading.inOneUnit().unit();
        double converted =
                unit == span.unit() ? value : unit.fromBase(span.unit().toBase(value));
        BigDecimal whole = BigDecimal.valueOf(converted).setScale(0, RoundingMode.HALF_EVEN);
        return Fact.amount(
                unit == reading.unit()
                        ? new Reading(reading.quantity(), whole, unit)
                        : Reading.poundsAndOunces(reading.quantity(), whole));
    }
}
