package readback.assistant.setup;

import java.util.List;
import java.util.Optional;
import readback.prompts.text.Message;

/** Which loudspeaker. */
final class LoudspeakerStep implements SetupStep {

    @Override
    public Step step() {
        return Step.LOUDSPEAKER;
    }

    @Override
    public boolean applies(SetupState state) {
        return !state.situation().loudspeakers().isEmpty();
    }

    @Override
    public Optional<Message> missing(SetupState state) {
        return Optional.of(Message.of("setup.loudspeaker.none"));
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return Offer.devices(state.situation().loudspeakers());
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        String device = offer.device().orElseThrow();
        return way.on(
                        state.deciding(state.decisions().with(Name.LOUDSPEAKER, device))
                                .hearing(state.sound().speakingBy(Optional.of(device))),
                        List.of())
                .after(new SetupEffect.SpeakBy(device));
    }
}
