package readback.assistant.setup;

import java.util.Optional;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.Reading;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Why a value is not taken. */
final class Refusal {
    private Refusal() {}

    /** That it lies beyond what there can be; empty where it does not. */
    static Optional<Message> of(Reading reading) {
        Grade.Span possible = Plausibility.possible(reading.quantity());
        double value = reading.in(possible.unit());
        return value >= possible.low() && value <= possible.high()
                ? Optional.empty()
                : Optional.of(Message.of("setup.refused")
                        .with("value", new Fact.Stated(reading))
                        .with("low", new Fact.Amount(Fact.rounded(possible.low()), possible.unit()))
                        .with("high", new Fact.Amount(Fact.rounded(possible.high()), possible.unit())));
    }
}
