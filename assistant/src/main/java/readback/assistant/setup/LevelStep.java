package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.microphone.SpeechLevel;
import readback.calc.name.ConstantName;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** How loud somebody speaks into the microphone, and whether that is understood. */
final class LevelStep implements SetupStep {

    /** What is said to find out how loud somebody speaks. */
    private static final String TEST_WORDS = "one two three";

    @Override
    public Step step() {
        return Step.LEVEL;
    }

    @Override
    public boolean listens() {
        return true;
    }

    @Override
    public Optional<SetupEffect> begins() {
        return Optional.of(SetupEffect.Trial.LEVEL);
    }

    /** The test words, and others that they could be mistaken for. */
    @Override
    public List<String> phrasesMeanwhile() {
        return List.of(TEST_WORDS, "four five six", "seven eight nine");
    }

    /** Somebody spoke, or nobody did. */
    Turn taken(SetupState state, SetupEvent.LevelTaken taken) {
        SpeechLevel level = taken.level();
        boolean nothing = level.grade() == SpeechLevel.Grade.NOTHING;
        List<Message> told = new ArrayList<>();
        told.add(Message.of("setup.level." + ConstantName.of(level.grade()))
                .with("speech", Decibels.of(level.speech()))
                .with("above", Decibels.of(level.aboveNoise())));
        if (!nothing) {
            told.add(taken.deaf()
                    .map(why -> Message.of("setup.level.deaf").with("why", new Fact.Quoted(why)))
                    .orElseGet(() -> understood(taken.words())));
        }
        return Turn.of(state.hearing(nothing ? state.sound() : state.sound().spokenAt(level.speech()))
                .at(SetupState.Moment.at(Step.LEVEL, told)));
    }

    private static Message understood(Optional<String> words) {
        if (words.isEmpty()) {
            return Message.of("setup.level.words.none");
        }
        return words.get().equals(TEST_WORDS)
                ? Message.of("setup.level.words.right")
                : Message.of("setup.level.words.other").with("words", new Fact.Quoted(words.get()));
    }
}
