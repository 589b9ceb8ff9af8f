package readback.assistant.microphone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.TargetDataLine;
import readback.assistant.sound.SoundDevices;

/** The microphones of this machine. */
public final class MicrophoneFinder {

    private MicrophoneFinder() {}

    /** A way to one microphone, to be used as often as it is lost. */
    @FunctionalInterface
    public interface Socket {
        /**
         * The microphone, recording.
         *
         * @throws MicrophoneLostException when it cannot be had now
         */
        Microphone open() throws MicrophoneLostException;
    }

    /** The names of the devices that can record, as they are shown and chosen. */
    public static List<String> names() {
        return devices().stream().map(Mixer.Info::getName).toList();
    }

    private static List<Mixer.Info> devices() {
        return SoundDevices.with(formats().stream()
                .map(format -> new DataLine.Info(TargetDataLine.class, format))
                .toList());
    }

    /**
     * The way to the microphone of the given name, else to the first whose name contains it, whatever its case; to the
     * system's own choice when none is given.
     */
    public static Socket named(Optional<String> part) {
        return () -> open(part);
    }

    /** Whether there is a microphone now whose name contains the given text; any, when none is given. */
    public static boolean there(Optional<String> part) {
        return SoundDevices.meant(devices(), part).isPresent();
    }

    private static Microphone open(Optional<String> part) throws MicrophoneLostException {
        List<Mixer.Info> devices = devices();
        if (devices.isEmpty()) {
            throw new MicrophoneLostException(
                    "There is no microphone: plug one in, or see whether the system lets programs record.");
        }
        return open(SoundDevices.meant(devices, part)
                .orElseThrow(() -> new MicrophoneLostException("There is no microphone '" + part.orElse("")
                        + "' now; there are: " + String.join(", ", names()) + ".")));
    }

    private static Microphone open(Mixer.Info chosen) throws MicrophoneLostException {
        Mixer mixer = AudioSystem.getMixer(chosen);
        String refusal = "";
        for (AudioFormat format : formats()) {
            DataLine.Info wanted = new DataLine.Info(TargetDataLine.class, format);
            if (mixer.isLineSupported(wanted)) {
                try {
                    return LineMicrophone.of(chosen.getName(), (TargetDataLine) mixer.getLine(wanted), format);
                } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
                    refusal = String.valueOf(e.getMessage());
                }
            }
        }
        throw new MicrophoneLostException(
                "The microphone '" + chosen.getName() + "' cannot be opened (" + refusal + ").");
    }

    /** What we can work with, the best first: our own rate, then what sound cards have without conversion. */
    private static List<AudioFormat> formats() {
        List<AudioFormat> formats = new ArrayList<>();
        for (float rate : new float[] {Microphone.RATE, 48000, 44100}) {
            for (int channels = 1; channels <= 2; channels++) {
                formats.add(new AudioFormat(rate, 16, channels, true, false));
            }
        }
        return formats;
    }
}
