package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;

/** Recordings named on the command line, files and folders. */
final class AudioFiles {

    /** A recording that can be played. */
    record Playable(Path file, Samples sound) {}

    private AudioFiles() {}

    /**
     * Everything that can be read, in order. What cannot is complained about, one sentence each.
     *
     * @throws CommandFailure when nothing can be read
     */
    static List<Playable> read(List<Path> named, Console console) {
        List<Playable> playable = new ArrayList<>();
        for (Path path : named) {
            for (Path file : files(path, console)) {
                Recording recording = Recording.read(file);
                recording.problem().ifPresent(console::complain);
                Optional<Samples> sound = recording.samples();
                sound.ifPresent(samples -> playable.add(new Playable(file, samples)));
            }
        }
        if (playable.isEmpty()) {
            throw new CommandFailure("There is no recording to listen to: name WAV files or a folder of them.");
        }
        return playable;
    }

    private static List<Path> files(Path path, Console console) {
        if (!Files.isDirectory(path)) {
            return List.of(path);
        }
        try (Stream<Path> inside = Files.list(path)) {
            List<Path> waves = inside.filter(file -> file.getFileName()
                            .toString()
                            .toLowerCase(Locale.ROOT)
                            .endsWith(".wav"))
                    .sorted()
                    .toList();
            if (waves.isEmpty()) {
                console.complain("The folder '" + path + "' holds no WAV files.");
            }
            return waves;
        } catch (IOException e) {
            console.complain("The folder '" + path + "' cannot be read: " + e.getMessage() + ".");
            return List.of();
        }
    }
}
