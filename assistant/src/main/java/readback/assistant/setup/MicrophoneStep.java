package readback.assistant.setup;

import java.util.List;
import java.util.Optional;
import readback.prompts.text.Message;

/** Which microphone. */
final class MicrophoneStep implements SetupStep {

    @Override
    public Step step() {
        return Step.MICROPHONE;
    }

    @Override
    public boolean applies(SetupState state) {
        return !state.situation().microphones().isEmpty();
    }

    @Override
    public Optional<Message> missing(SetupState state) {
        return Optional.of(Message.of("setup.microphone.none"));
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return Offer.devices(state.situation().microphones());
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        String device = offer.device().orElseThrow();
        return way.on(
                        state.deciding(state.decisions().with(Name.MICROPHONE, device))
                                .hearing(state.sound().listeningTo(Optional.of(device))),
                        List.of())
                .after(new SetupEffect.ListenTo(device));
    }

    /** The microphone gives nothing any more: one that is needed is chosen anew, another one only told about. */
    Turn lost(SetupState state, List<Message> told, boolean needed, Way way) {
        SetupState deaf = state.hearing(state.sound().listeningTo(Optional.empty()));
        return needed
                ? way.to(Step.MICROPHONE, deaf.deciding(deaf.decisions().without(Name.MICROPHONE)), told)
                : Turn.of(deaf.at(new SetupState.Moment(
                        state.step(), state.now().busy(), state.now().altitude(), told)));
    }
}
