package readback.assistant.voice;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The voices that can be asked for by name. */
public enum VoiceChoice {
    /** The one that comes with Readback, in Java. */
    EMBEDDED {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return MaryVoice.open(home.resolve("lib").resolve("voice"));
        }
    },
    /** The program flite, where it is installed. */
    FLITE {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return FliteVoice.open("flite");
        }
    },
    /** The operating system's own, where it has one. */
    SYSTEM {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return SystemVoice.open(System.getProperty("os.name", ""));
        }
    },
    /** No sound at all; the text on the screen is everything. */
    NONE {
        @Override
        public Voice open(Path home) {
            return new NoVoice();
        }
    };

    /**
     * The first voice that can be had: an installed program, which was understood best, then the operating system's,
     * then the embedded one; without any, none.
     *
     * @param home folder of the distribution, the one that holds {@code lib}
     */
    public static Voice best(Path home) {
        for (VoiceChoice choice : List.of(FLITE, SYSTEM, EMBEDDED)) {
            Optional<Voice> voice = choice.tried(home);
            if (voice.isPresent()) {
                return voice.get();
            }
        }
        return new NoVoice();
    }

    private Optional<Voice> tried(Path home) {
        try {
            return Optional.of(open(home));
        } catch (VoiceFailedException e) {
            return Optional.empty();
        }
    }

    /**
     * The voice, ready to speak.
     *
     * @param home folder of the distribution, the one that holds {@code lib}
     * @throws VoiceFailedException when it cannot be had on this machine
     */
    public abstract Voice open(Path home) throws VoiceFailedException;
}
