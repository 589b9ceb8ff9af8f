package readback.assistant.voice;

import java.util.List;
import java.util.Locale;

/**
 * The operating system's own voice: {@code say} on macOS, System.Speech by PowerShell on Windows. Written from their
 * documentation; what the programs do was not tried on this project's machines.
 */
final class SystemVoice {

    /** Reads the first file, writes the second. Paths come as arguments, so nothing in them is taken for script. */
    private static final String SCRIPT = "& { param($words, $sound) Add-Type -AssemblyName System.Speech;"
            + " $voice = New-Object System.Speech.Synthesis.SpeechSynthesizer; $voice.SetOutputToWaveFile($sound);"
            + " $voice.Speak([System.IO.File]::ReadAllText($words)); $voice.Dispose() }";

    private SystemVoice() {}

    /**
     * The voice of the operating system of this name, as in the system property {@code os.name}.
     *
     * @throws VoiceFailedException when it has none that we know
     */
    static Voice open(String system) throws VoiceFailedException {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("mac")) {
            return ProgramVoice.open(
                    "macOS",
                    "say",
                    (words, sound) ->
                            List.of("--data-format=LEI16@22050", "-o", sound.toString(), "-f", words.toString()));
        }
        if (name.contains("windows")) {
            return ProgramVoice.open(
                    "Windows",
                    "powershell.exe",
                    (words, sound) -> List.of(
                            "-NoProfile", "-NonInteractive", "-Command", SCRIPT, words.toString(), sound.toString()));
        }
        throw new VoiceFailedException("The operating system " + system
                + " has no voice of its own that Readback knows: choose another voice with --voice.");
    }
}
