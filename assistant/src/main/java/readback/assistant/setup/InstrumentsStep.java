package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Reading;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** How far the instruments may be off. */
final class InstrumentsStep implements SetupStep {

    @Override
    public Step step() {
        return Step.INSTRUMENTS;
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return Offer.commands(Choice.NEXT, Choice.BACK);
    }

    @Override
    public boolean takesValues(SetupState state) {
        return true;
    }

    @Override
    public Optional<Turn> said(SetupState state, List<Reading> readings) {
        if (!readings.stream().allMatch(each -> Accuracies.among(each.quantity()))) {
            return Optional.empty();
        }
        Optional<Message> refused =
                readings.stream().flatMap(each -> Refusal.of(each).stream()).findFirst();
        if (refused.isPresent()) {
            return Optional.of(Turn.of(state.telling(refused.get())));
        }
        Decisions decisions = state.decisions();
        List<Message> told = new ArrayList<>();
        for (Reading reading : readings) {
            decisions = decisions.stating(reading);
            told.add(Message.of("setup.instruments.said").with("value", new Fact.Stated(reading)));
        }
        return Optional.of(Turn.of(state.deciding(decisions).at(SetupState.Moment.at(Step.INSTRUMENTS, told))));
    }
}
