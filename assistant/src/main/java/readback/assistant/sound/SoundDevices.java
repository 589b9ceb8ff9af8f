package readback.assistant.sound;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;

/** The devices of this machine that sound comes from or goes to, and how one is meant by a part of its name. */
public final class SoundDevices {

    private SoundDevices() {}

    /** Those with a line of one of these kinds, the system's own choice first. */
    public static List<Mixer.Info> with(List<? extends Line.Info> lines) {
        return Stream.of(AudioSystem.getMixerInfo())
                .filter(info -> lines.stream()
                        .anyMatch(line -> AudioSystem.getMixer(info).isLineSupported(line)))
                .toList();
    }

    /**
     * The one that is meant: that of this very name, else the first whose name contains the text, whatever its case;
     * the first of all where nothing is named.
     */
    public static Optional<Mixer.Info> meant(List<Mixer.Info> devices, Optional<String> part) {
        String wanted = lower(part.orElse(""));
        Predicate<Mixer.Info> same = info -> lower(info.getName()).equals(wanted);
        return devices.stream()
                .filter(info -> lower(info.getName()).contains(wanted))
                .min(Comparator.comparing(same.negate()::test));
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
