package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Whether all of it goes into the file. */
final class WriteStep implements SetupStep {

    @Override
    public Step step() {
        return Step.WRITE;
    }

    @Override
    public Message question(SetupState state) {
        return Message.of(state.situation().there() ? "setup.write.there" : "setup.write.ask")
                .with("file", new Fact.Quoted(state.situation().file()));
    }

    @Override
    public List<Offer> offers(SetupState state) {
        return List.of(
                Offer.of(Choice.YES).labelled(Message.of("setup.option.yes.write")),
                Offer.of(Choice.NO).labelled(Message.of("setup.option.no.write")),
                Offer.of(Choice.BACK));
    }

    /** A file that is being written is waited for. */
    @Override
    public List<Offer> offersMeanwhile() {
        return List.of();
    }

    @Override
    public Turn chosen(SetupState state, Offer offer, Way way) {
        return offer.choice() == Choice.YES
                ? Turn.of(
                        state.telling().begun(),
                        new SetupEffect.Write(state.decisions().all()))
                : way.to(Step.MENU, state, List.of(Message.of("setup.left")));
    }

    /** The file was written, or not. */
    Turn written(SetupState state, SetupEvent.Written written, Way way) {
        if (written.failure().isPresent()) {
            return Turn.of(state.telling(Message.of("setup.write.failed")
                    .with("why", new Fact.Quoted(written.failure().get()))));
        }
        List<Message> told = new ArrayList<>();
        told.add(Message.of("setup.written"));
        written.kept().ifPresent(kept -> told.add(Message.of("setup.kept").with("file", new Fact.Quoted(kept))));
        return way.to(Step.MENU, state.written(), told);
    }
}
