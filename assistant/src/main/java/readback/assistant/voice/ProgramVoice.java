package readback.assistant.voice;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;

/** A voice that is a program: one process a text, which reads words from a file and writes a wave file. */
final class ProgramVoice implements Voice {

    /** The command line for a text. */
    @FunctionalInterface
    interface Arguments {
        /** What follows the program's name. */
        List<String> of(Path words, Path sound);
    }

    private static final int RATE = 16000;
    private static final int PATIENCE_SECONDS = 20;

    private final String name;
    private final String program;
    private final Arguments arguments;

    private ProgramVoice(String name, String program, Arguments arguments) {
        this.name = name;
        this.program = program;
        this.arguments = arguments;
    }

    /**
     * The voice of a program on the PATH.
     *
     * @throws VoiceFailedException when the program does not speak
     */
    static ProgramVoice open(String name, String program, Arguments arguments) throws VoiceFailedException {
        ProgramVoice voice = new ProgramVoice(name, program, arguments);
        voice.speak("ready");
        return voice;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Samples speak(String text) throws VoiceFailedException {
        if (text.isBlank()) {
            return Samples.silence(0, RATE);
        }
        try {
            Path folder = Files.createTempDirectory("readback-voice");
            Path words = folder.resolve("words.txt");
            Path sound = folder.resolve("sound.wav");
            try {
                Files.writeString(words, spellable(text), StandardCharsets.US_ASCII);
                run(words, sound);
                return Recording.read(sound)
                        .samples()
                        .orElseThrow(() -> new VoiceFailedException(
                                "The program '" + program + "' made no sound: choose another voice with --voice."));
            } finally {
                Files.deleteIfExists(words);
                Files.deleteIfExists(sound);
                Files.deleteIfExists(folder);
            }
        } catch (IOException failed) {
            throw new VoiceFailedException(
                    "The program '" + program + "' cannot be run (" + failed.getMessage()
                            + "): install it, or choose another voice with --voice.",
                    failed);
        }
    }

    /** Programs differ in what they make of letters outside ASCII; none of ours has to be heard. */
    private static String spellable(String text) {
        return text.replaceAll("[^\\p{ASCII}]", " ");
    }

    private void run(Path words, Path sound) throws IOException, VoiceFailedException {
        List<String> command = new ArrayList<>(List.of(program));
        command.addAll(arguments.of(words, sound));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
                throw new VoiceFailedException("The program '" + program
                        + "' failed to speak: see whether it runs by itself, or choose another voice with --voice.");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new VoiceFailedException("Speaking was interrupted.", stopped);
        } finally {
            process.destroyForcibly();
        }
    }

    @Override
    public void close() {
        // Each text has a process of its own, which is over.
    }
}
