package readback.assistant.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import readback.assistant.sound.Samples;
import readback.assistant.sound.WaveWriter;

/**
 * The utterances of one session as wave files, as many as the budget allows. Owned by the thread that runs the session.
 */
final class AudioShelf {

    private static final int WAVE_HEADER_BYTES = 44;
    private static final int BYTES_PER_SAMPLE = 2;

    private static final Pattern NAME = Pattern.compile("[0-9]{5,10}\\.wav");

    private final Path folder;
    private final AudioBudget budget;
    private long used;

    private AudioShelf(Path folder, AudioBudget budget, long used) {
        this.folder = folder;
        this.budget = budget;
        this.used = used;
    }

    /** The shelf of a session; what lies on it already counts. */
    static AudioShelf in(Path session, AudioBudget budget) {
        Path folder = session.resolve(SessionRecord.AUDIO);
        return new AudioShelf(folder, budget, Files.isDirectory(folder) ? size(folder) : 0);
    }

    /** Whether the name is one that {@link #keep} gives: a record that was tampered with cannot lead elsewhere. */
    static boolean isName(String file) {
        return NAME.matcher(file).matches();
    }

    private static long size(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.mapToLong(file -> file.toFile().length()).sum();
        } catch (IOException e) {
            return Long.MAX_VALUE;
        }
    }

    /**
     * Keeps the sound of an event.
     *
     * @throws IOException when the budget or the disk has no room for it
     */
    AudioClip keep(int number, Samples sound) throws IOException {
        long size = WAVE_HEADER_BYTES + (long) BYTES_PER_SAMPLE * sound.length();
        if (used > budget.bytes() - size) {
            throw new IOException("the disk budget for sound is used up");
        }
        if (!Files.isDirectory(folder)) {
            Files.createDirectory(folder, OwnerOnly.folder(folder));
        }
        if (Files.getFileStore(folder).getUsableSpace() - size < budget.reserve()) {
            throw new IOException("the disk is nearly full");
        }
        String name = String.format(Locale.ROOT, "%05d.wav", number);
        Path file = folder.resolve(name);
        Files.deleteIfExists(file);
        Files.createFile(file, OwnerOnly.file(file));
        WaveWriter.write(file, sound);
        byte[] bytes = Files.readAllBytes(file);
        used += bytes.length;
        return new AudioClip(name, Chain.sha256(bytes, 0, bytes.length));
    }
}
