package readback.assistant.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Expectation;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** How high above sea level the work is; read back before it counts. */
final class AltitudeStep implements SetupStep {

    @Override
    public Step step() {
        return Step.ALTITUDE;
    }

    @Override
    public Message question(SetupState state) {
        return state.now()
                .altitude()
                .map(said -> Message.of("setup.altitude.said").with("altitude", new Fact.Stated(said)))
                .orElseGet(() -> SetupStep.super.question(state));
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return takesValues(state)
                ? Offer.commands(Choice.SKIP, Choice.BACK)
                : Offer.commands(Choice.YES, Choice.NO, Choice.BACK);
    }

    @Override
    public boolean takesValues(SetupState state) {
        return state.now().altitude().isEmpty();
    }

    @Override
    public Expectation expectation(SetupState state) {
        return takesValues(state)
                ? new Expectation(
                        "setup",
                        Optional.of(Quantity.ALTITUDE),
                        Optional.of(Quantity.ALTITUDE.name().toLowerCase(Locale.ROOT)),
                        Optional.empty(),
                        state.decisions().units())
                : SetupStep.super.expectation(state);
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        Reading height = state.now().altitude().orElseThrow();
        return offer.choice() == Choice.YES
                ? way.on(state.deciding(state.decisions().with(Name.ALTITUDE, feet(height))), List.of())
                : way.to(Step.ALTITUDE, state, List.of());
    }

    @Override
    public Optional<Turn> said(SetupState state, List<Reading> readings) {
        if (readings.size() != 1 || readings.get(0).quantity() != Quantity.ALTITUDE) {
            return Optional.empty();
        }
        Reading height = readings.get(0);
        return Optional.of(Refusal.of(height)
                .map(refused -> Turn.of(state.telling(refused)))
                .orElseGet(() -> Turn.of(
                        state.at(new SetupState.Moment(Step.ALTITUDE, false, Optional.of(height), List.of())))));
    }

    /** From the question whether it is right, back to the one how high it is. */
    @Override
    public Turn back(SetupState state, Way way) {
        return takesValues(state) ? way.back(state) : way.to(Step.ALTITUDE, state, List.of());
    }

    private static String feet(Reading height) {
        return BigDecimal.valueOf(height.in(Unit.FOOT))
                .setScale(0, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
