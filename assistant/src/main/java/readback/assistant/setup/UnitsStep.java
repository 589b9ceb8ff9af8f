package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import readback.calc.quantity.UnitSetting;

/** Which units are meant where none is said. */
final class UnitsStep implements SetupStep {

    @Override
    public Step step() {
        return Step.UNITS;
    }

    @Override
    public List<Offer> offers(SetupState state) {
        List<Offer> offers = new ArrayList<>(Offer.numbered(Choice.US, Choice.METRIC));
        offers.addAll(Offer.commands(Choice.SKIP, Choice.BACK));
        return offers;
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        UnitSetting units = offer.choice() == Choice.METRIC ? UnitSetting.METRIC : UnitSetting.US;
        return way.on(state.deciding(state.decisions().with(units)), List.of());
    }
}
