package readback.assistant.sound;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;

/** What came of reading an audio file. */
public sealed interface Recording {

    /** What was read; empty only when nothing could be. */
    Optional<Samples> samples();

    /** One sentence that says what was wrong and what to do about it; empty when nothing was. */
    Optional<String> problem();

    /** All of it. */
    record Whole(Samples sound) implements Recording {
        @Override
        public Optional<Samples> samples() {
            return Optional.of(sound);
        }

        @Override
        public Optional<String> problem() {
            return Optional.empty();
        }
    }

    /** The part that could be read of a damaged file; never empty. */
    record Part(Samples sound, String why) implements Recording {
        @Override
        public Optional<Samples> samples() {
            return Optional.of(sound);
        }

        @Override
        public Optional<String> problem() {
            return Optional.of(why);
        }
    }

    /** Nothing. */
    record Unreadable(String why) implements Recording {
        @Override
        public Optional<Samples> samples() {
            return Optional.empty();
        }

        @Override
        public Optional<String> problem() {
            return Optional.of(why);
        }
    }

    /**
     * What the wave file holds: PCM of 8, 16 or 24 bits, one channel or two (their mean), 8 to 48 kHz, at most an hour.
     * Anything else gives an {@link Unreadable} that says what it is instead.
     */
    static Recording read(Path file) {
        return WaveReader.read(file);
    }

    /**
     * As {@link #read(Path)}, from a stream that the caller closes.
     *
     * @param name what messages about it call it
     */
    static Recording read(String name, InputStream in) {
        return WaveReader.read(name, in);
    }
}
