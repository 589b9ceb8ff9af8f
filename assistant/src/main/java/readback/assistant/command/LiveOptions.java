package readback.assistant.command;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.dialogue.Delivery;
import readback.assistant.echo.WebRtcEchoCanceller;
import readback.assistant.live.ListeningMode;
import readback.assistant.live.LiveSession;
import readback.assistant.live.OwnVoice;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.screen.Palette;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.webrtc.ProcessingUnavailableException;
import readback.calc.name.ConstantName;

/** How a live session listens, speaks and looks. */
final class LiveOptions {

    @Mixin
    private MicrophoneOption microphone = new MicrophoneOption();

    @Mixin
    private LoudspeakerOption loudspeaker = new LoudspeakerOption();

    @Option(
            names = "--listen",
            paramLabel = "open|key|both",
            description =
                    "open listens by itself; key from a press of the talk key (space, enter, an arrow or page key,"
                            + " as clickers send) to the end of what is said; both does both. Default: both.")
    private String listen = "both";

    @Option(
            names = "--headset",
            negatable = true,
            fallbackValue = "true",
            description = "Listen while speaking, and stop speaking when spoken to. Only with a headset: a loudspeaker"
                    + " would be heard as words.")
    private boolean headset;

    @Option(
            names = "--barge-in",
            negatable = true,
            defaultValue = "true",
            fallbackValue = "true",
            description =
                    "Hear a few orders while speaking: stop, wait, yes, no, correction, say again, understood, next,"
                            + " skip, go back, help. Not with Bluetooth, and not where the loudspeaker drowns the microphone. Default: yes.")
    private boolean bargeIn;

    @Option(
            names = "--gate",
            paramLabel = "DB",
            description = "Sound below this level is never speech, in decibels of full scale. Default: -55.")
    private double gate = LevelMeter.USUAL_GATE;

    @Option(names = "--volume", paramLabel = "0..2", description = "Loudness of the voice. Default: 1.")
    private double volume = 1;

    @Option(names = "--speed", paramLabel = "0.5..2", description = "Speed of the voice. Default: 1.")
    private double speed = 1;

    @Option(
            names = "--theme",
            paramLabel = "day|night",
            description = "day is black on white, for sunlight; night is white on black. Default: day.")
    private String theme = "day";

    @Option(
            names = "--plain",
            negatable = true,
            fallbackValue = "true",
            description = "Plain lines in place of the screen: for screen readers, logs and pipes. By itself when the"
                    + " output is no terminal.")
    private boolean plain;

    @Option(
            names = SettingsDefaults.OPTION,
            paramLabel = "FILE",
            description = "Settings file in place of the one in the user's configuration folder; readback settings"
                    + " prints one.")
    // Read before the options are, because it gives them their defaults; here for the help and the syntax.
    @SuppressWarnings("UnusedVariable")
    private @Nullable Path settings;

    MicrophoneFinder.Socket microphone() {
        return microphone.socket();
    }

    boolean hasMicrophone() {
        return microphone.there();
    }

    Loudspeaker loudspeaker() {
        return loudspeaker.loudspeaker();
    }

    boolean plain() {
        return plain;
    }

    LiveSession.Settings settings(boolean keepsSound) {
        return new LiveSession.Settings(
                one("--listen", listen, ListeningMode.values()), headset, within("--gate", gate, -90, 0), keepsSound);
    }

    /** How loud and how fast the voice speaks. */
    Delivery delivery() {
        return new Delivery(percent(within("--volume", volume, 0, 2)), percent(within("--speed", speed, 0.5, 2)));
    }

    private static int percent(double share) {
        return (int) Math.round(share * 100);
    }

    /** What takes the voice out of the sound, if orders are to be heard while it speaks. */
    OwnVoice ownVoice() {
        if (!bargeIn || headset) {
            return OwnVoice.LEFT_IN;
        }
        try {
            return OwnVoice.takenOutBy(WebRtcEchoCanceller.open());
        } catch (ProcessingUnavailableException e) {
            return OwnVoice.unavailable(String.valueOf(e.getMessage()));
        }
    }

    /** Refuses what is out of range, where no live session would look at it too. */
    void check() {
        settings(false);
        delivery();
        palette();
    }

    Palette palette() {
        return one("--theme", theme, Palette.values());
    }

    private static double within(String option, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new CommandFailure(
                    String.format(Locale.ROOT, "%s lies between %s and %s, not at %s.", option, low, high, value));
        }
        return value;
    }

    private static <E extends Enum<E>> E one(String option, String text, E[] all) {
        for (E each : all) {
            if (ConstantName.of(each).equals(text.toLowerCase(Locale.ROOT))) {
                return each;
            }
        }
        StringBuilder names = new StringBuilder();
        for (E each : all) {
            names.append(names.isEmpty() ? "" : " or ").append(ConstantName.of(each));
        }
        throw new CommandFailure(option + " is " + names + ", not '" + text + "'.");
    }
}
