package readback.assistant.voice;

import java.util.List;

/**
 * The program flite (Carnegie Mellon University, BSD-style licence) with its voice {@code rms}. Of the engines tried it
 * was understood best by an independent recogniser.
 */
final class FliteVoice {

    private static final String SPEAKER = "rms";

    private FliteVoice() {}

    /**
     * The voice of a program on the PATH.
     *
     * @throws VoiceFailedException when the program does not speak
     */
    static Voice open(String program) throws VoiceFailedException {
        return ProgramVoice.open(
                "flite, " + SPEAKER,
                program,
                (words, sound) -> List.of("-voice", SPEAKER, "-f", words.toString(), "-o", sound.toString()));
    }
}
