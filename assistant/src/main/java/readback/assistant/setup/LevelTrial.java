package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.SpeechLevel;
import readback.assistant.sound.Samples;

/** Somebody says the test words: how loud, and whether they are understood. What is offered may be said instead. */
final class LevelTrial implements Trial {

    /**
     * So long somebody is waited for who is to say something, in seconds of sound; half of it where nothing listens.
     */
    private static final double SECONDS = 10;

    private final Optional<String> deaf;
    private final Function<short[], Optional<Utterance>> ear;
    private final Predicate<String> offered;
    private final Consumer<String> chosen;
    private final Consumer<SetupEvent.LevelTaken> outcome;
    private final List<Samples> sound = new ArrayList<>();
    private double seconds;

    /**
     * @param deaf why there is no recogniser
     * @param ear hears a piece of sound
     * @param offered whether words choose something that is offered
     * @param chosen takes such words
     */
    LevelTrial(
            Optional<String> deaf,
            Function<short[], Optional<Utterance>> ear,
            Predicate<String> offered,
            Consumer<String> chosen,
            Consumer<SetupEvent.LevelTaken> outcome) {
        this.deaf = deaf;
        this.ear = ear;
        this.offered = offered;
        this.chosen = chosen;
        this.outcome = outcome;
    }

    @Override
    public void sound(short[] chunk, short[] playedThen) {
        sound.add(Samples.of(chunk, Microphone.RATE));
        seconds += (double) chunk.length / Microphone.RATE;
        Optional<Utterance> utterance = ear.apply(chunk);
        String words = utterance
                .map(each -> each.words().replace(Ear.UNKNOWN, "").strip())
                .orElse("");
        if (offered.test(words)) {
            chosen.accept(words);
        } else if (utterance.isPresent() || seconds >= (deaf.isPresent() ? SECONDS / 2 : SECONDS)) {
            outcome.accept(new SetupEvent.LevelTaken(
                    SpeechLevel.of(Samples.joined(sound, Microphone.RATE).pcm(), Microphone.RATE),
                    Optional.of(words).filter(some -> !some.isEmpty()),
                    deaf));
        }
    }

    @Override
    public boolean listens() {
        return true;
    }
}
