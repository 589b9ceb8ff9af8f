package readback.assistant.command;

import java.util.Optional;
import java.util.OptionalDouble;
import readback.assistant.bench.ClosedLoop;
import readback.assistant.bench.SpokenWords;
import readback.assistant.bench.UnknownStepException;
import readback.assistant.ear.Ear;
import readback.assistant.voice.Voice;

/** Service calls at simulated units by voice, as {@link MeasureCommand} is told to make them. */
record VoiceCalls(Console console, int calls, long start, Optional<Double> noise, EarOptions ear) {

    private static final int MOST_CALLS = 10_000;

    void make() {
        if (calls < 1 || calls > MOST_CALLS) {
            throw new CommandFailure("--calls is a number of calls from 1 to " + MOST_CALLS + ", not " + calls + ".");
        }
        Desk desk = Desk.standard();
        try (Voice voice = VoiceOptions.live(null);
                Ear listening = ear.open(desk.grammar(), console)) {
            SpokenWords speech = new SpokenWords(
                    desk.grammar(),
                    voice,
                    listening,
                    noise.map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
            console.out()
                    .println(calls + " calls by voice (" + voice.name() + "), start number " + start + ", "
                            + noise.map(level -> "a fan at " + level + " dB").orElse("in quiet"));
            new ClosedLoop(desk.dialogue(), speech, start)
                    .measure(calls, made -> console.err().println(made + " of " + calls + " calls made"))
                    .forEach(console.out()::println);
        } catch (UnknownStepException | SpokenWords.VoiceSilentException e) {
            throw new CommandFailure(e);
        }
    }
}
