package readback.assistant.setup;

import java.util.List;
import readback.calc.name.ConstantName;
import readback.prompts.text.Message;

/** Whether it listens while it speaks, as the measurement proposes. */
final class ListeningStep implements SetupStep {

    @Override
    public Step step() {
        return Step.LISTENING;
    }

    @Override
    public boolean applies(SetupState state) {
        return state.sound().echo().isPresent();
    }

    @Override
    public Message question(SetupState state) {
        return Message.of(
                "setup.listening." + ConstantName.of(state.sound().echo().orElseThrow()));
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return Offer.commands(Choice.YES, Choice.NO, Choice.SKIP, Choice.BACK);
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        return way.on(state.deciding(decided(state, offer.choice() == Choice.YES)), List.of());
    }

    /** With a headset everything is heard all the time, else orders or nothing. */
    private static Decisions decided(SetupState state, boolean agreed) {
        Decisions decisions = state.decisions();
        return switch (state.sound().echo().orElseThrow()) {
            case NOT_HEARD -> decisions.with(Name.HEADSET, agreed);
            case TAKEN_OUT -> decisions.with(Name.BARGE_IN, agreed).with(Name.HEADSET, false);
            case TOO_STRONG -> decisions.with(Name.BARGE_IN, !agreed).with(Name.HEADSET, false);
        };
    }
}
