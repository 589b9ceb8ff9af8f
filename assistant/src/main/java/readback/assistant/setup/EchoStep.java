package readback.assistant.setup;

import java.util.List;
import java.util.Optional;
import readback.assistant.echo.Bluetooth;
import readback.assistant.echo.EchoTrial;
import readback.calc.name.ConstantName;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** How much of the loudspeaker the microphone hears. Sound by radio is on its way for too long to be tried. */
final class EchoStep implements SetupStep {

    @Override
    public Step step() {
        return Step.ECHO;
    }

    @Override
    public boolean applies(SetupState state) {
        return heardByBoth(state.sound()) && !byRadio(state.sound());
    }

    @Override
    public SetupState passedBy(SetupState state) {
        return late(state.sound()) ? state.deciding(state.decisions().with(Name.BARGE_IN, false)) : state;
    }

    @Override
    public Optional<Message> missing(SetupState state) {
        return late(state.sound()) ? Optional.of(Message.of("setup.echo.bluetooth")) : Optional.empty();
    }

    @Override
    public boolean listens() {
        return true;
    }

    @Override
    public Optional<SetupEffect> begins() {
        return Optional.of(SetupEffect.Trial.ECHO);
    }

    /** It listened to itself, or could not. */
    Turn tried(SetupState state, SetupEvent.EchoTried tried, Way way) {
        return tried.result()
                .map(result -> way.to(
                        Step.LISTENING, state.hearing(state.sound().tried(result.outcome())), List.of(found(result))))
                .orElseGet(() -> Turn.of(state.telling(Message.of("setup.echo.failed")
                        .with("why", new Fact.Quoted(tried.failure().orElse(""))))));
    }

    private static Message found(EchoTrial.Result result) {
        return Message.of("setup.echo." + ConstantName.of(result.outcome()))
                .with("above", Decibels.above(result.above()))
                .with("reduction", Decibels.above(result.reduction()));
    }

    private static boolean late(SoundFound sound) {
        return heardByBoth(sound) && byRadio(sound);
    }

    private static boolean heardByBoth(SoundFound sound) {
        return sound.microphone().isPresent() && sound.audible();
    }

    private static boolean byRadio(SoundFound sound) {
        return sound.microphone().filter(Bluetooth::named).isPresent()
                || sound.loudspeaker().filter(Bluetooth::named).isPresent();
    }
}
