package readback.assistant.setup;

import java.util.List;

/** What to do at all. */
final class MenuStep implements SetupStep {

    @Override
    public Step step() {
        return Step.MENU;
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return Offer.numbered(
                Choice.SET_UP, Choice.DEMO, Choice.PRACTICE, Choice.CHECK, Choice.SELFCHECK, Choice.LEAVE);
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        return offer.choice() == Choice.SET_UP
                ? way.on(state, List.of())
                : Turn.of(state, new SetupEffect.End(offer.choice()));
    }
}
