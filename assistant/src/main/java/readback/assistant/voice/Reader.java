package readback.assistant.voice;

import java.nio.file.Path;
import java.util.List;

/**
 * A voice that reads a simulated technician's words aloud, so that hearing can be measured. Whether the acoustic model
 * was trained on it is told by the model card and its recipe.
 */
public enum Reader {
    /** The voice rms of the program flite. */
    RMS(Acquaintance.STRANGER) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return FliteVoice.open("flite");
        }
    },
    /** Speakers of the program espeak-ng that were held out; others of it were trained on. */
    F4(Acquaintance.STRANGER) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return espeak("f4");
        }
    },
    MIKE(Acquaintance.STRANGER) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return espeak("Mike");
        }
    },
    JACKY(Acquaintance.STRANGER) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return espeak("Jacky");
        }
    },
    MARCELO(Acquaintance.STRANGER) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return espeak("marcelo");
        }
    },
    /** The operating system's own, where it has one. */
    SYSTEM(Acquaintance.STRANGER) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return VoiceChoice.SYSTEM.open(home);
        }
    },
    /** The one that comes with Readback: its speaker was trained on, through two other programs. */
    EMBEDDED(Acquaintance.TRAINED_ON) {
        @Override
        public Voice open(Path home) throws VoiceFailedException {
            return VoiceChoice.EMBEDDED.open(home);
        }
    };

    /** How the acoustic model stands to a voice. */
    public enum Acquaintance {
        /** Neither the voice nor its speaker was trained on. */
        STRANGER,
        /** The voice or its speaker was trained on: it says nothing about how others are heard. */
        TRAINED_ON
    }

    private final Acquaintance acquaintance;

    Reader(Acquaintance acquaintance) {
        this.acquaintance = acquaintance;
    }

    public Acquaintance acquaintance() {
        return acquaintance;
    }

    /**
     * The voice, ready to speak.
     *
     * @param home folder of the distribution, the one that holds {@code lib}
     * @throws VoiceFailedException when it cannot be had on this machine
     */
    public abstract Voice open(Path home) throws VoiceFailedException;

    private static Voice espeak(String speaker) throws VoiceFailedException {
        return ProgramVoice.open(
                "espeak-ng, " + speaker,
                "espeak-ng",
                (words, sound) ->
                        List.of("-v", "en-us+" + speaker, "-s", "150", "-f", words.toString(), "-w", sound.toString()));
    }
}
