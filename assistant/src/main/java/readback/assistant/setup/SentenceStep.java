package readback.assistant.setup;

import java.util.List;
import java.util.Optional;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Whether a test sentence is heard from the loudspeaker. */
final class SentenceStep implements SetupStep {

    @Override
    public Step step() {
        return Step.SENTENCE;
    }

    @Override
    public boolean applies(SetupState state) {
        return state.sound().loudspeaker().isPresent();
    }

    @Override
    public Optional<SetupEffect> begins() {
        return Optional.of(SetupEffect.Trial.SENTENCE);
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return Offer.commands(Choice.YES, Choice.NO, Choice.AGAIN, Choice.SKIP, Choice.BACK);
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        return switch (offer.choice()) {
            case YES -> way.on(state.hearing(state.sound().heardByPerson()), List.of());
            case NO -> unheard(state, Message.of("setup.sentence.no"), way);
            default -> way.to(Step.SENTENCE, state, List.of());
        };
    }

    /** The sentence was played, or could not be. */
    Turn played(SetupState state, SetupEvent.SentencePlayed played, Way way) {
        return played.failure()
                .map(why -> unheard(state, Message.of("setup.sentence.failed").with("why", new Fact.Quoted(why)), way))
                .orElseGet(() -> Turn.of(state.telling()));
    }

    /** A loudspeaker that nobody hears is not used, and not written; there may be another one. */
    private static Turn unheard(SetupState state, Message why, Way way) {
        return way.to(
                Step.LOUDSPEAKER,
                state.deciding(state.decisions().without(Name.LOUDSPEAKER))
                        .hearing(state.sound().speakingBy(Optional.empty())),
                List.of(why));
    }
}
