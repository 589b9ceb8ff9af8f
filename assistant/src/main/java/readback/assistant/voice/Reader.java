package readback.assistant.voice;

import java.nio.file.Path;
import java.util.List;

/**
 * A voice that reads a simulated technician's words aloud, so that hearing can be measured. Whether the acoustic model
 * was trained on it is told by the model card and its recipe.
 */
public enum Reader {
    /** The voice rms of the program flite. */
    RMS(Acquaintance.STRANGER, home -> FliteVoice.open("flite")),
    /** Speakers of the program espeak-ng that were held out; others of it were trained on. */
    F4(Acquaintance.STRANGER, home -> espeak("f4")),
    MIKE(Acquaintance.STRANGER, home -> espeak("Mike")),
    JACKY(Acquaintance.STRANGER, home -> espeak("Jacky")),
    MARCELO(Acquaintance.STRANGER, home -> espeak("marcelo")),
    /** The operating system's own, where it has one. */
    SYSTEM(Acquaintance.STRANGER, VoiceChoice.SYSTEM::open),
    /** The one that comes with Readback: its speaker was trained on, through two other programs. */
    EMBEDDED(Acquaintance.TRAINED_ON, VoiceChoice.EMBEDDED::open);

    /** How the acoustic model stands to a voice. */
    public enum Acquaintance {
        /** Neither the voice nor its speaker was trained on. */
        STRANGER,
        /** The voice or its speaker was trained on: it says nothing about how others are heard. */
        TRAINED_ON
    }

    /** How a voice is had, with the folder of the distribution. */
    private interface Opener {
        Voice open(Path home) throws VoiceFailedException;
    }

    private final Acquaintance acquaintance;
    private final Opener opener;

    Reader(Acquaintance acquaintance, Opener opener) {
        this.acquaintance = acquaintance;
        this.opener = opener;
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
    public Voice open(Path home) throws VoiceFailedException {
        return opener.open(home);
    }

    private static Voice espeak(String speaker) throws VoiceFailedException {
        return ProgramVoice.open(
                "espeak-ng, " + speaker,
                "espeak-ng",
                (words, sound) ->
                        List.of("-v", "en-us+" + speaker, "-s", "150", "-f", words.toString(), "-w", sound.toString()));
    }
}
