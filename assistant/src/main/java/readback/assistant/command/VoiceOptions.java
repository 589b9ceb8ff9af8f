package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.session.SpeakingAudience;
import readback.assistant.sound.Samples;
import readback.assistant.voice.SpokenConversation;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceChoice;
import readback.assistant.voice.VoiceFailedException;
import readback.calc.name.ConstantName;

/** Which voice speaks, and where to. */
final class VoiceOptions {

    /** System property that the launcher sets to the distribution's folder. */
    static final String HOME = "readback.home";

    @Option(
            names = "--voice",
            paramLabel = "embedded|flite|system|none",
            description = "embedded comes with Readback; flite is a program; system is the operating system's own."
                    + " Default: live the first of flite, system, embedded that is there; into a file embedded.")
    private @Nullable String voice;

    @Option(names = "--speak-to", paramLabel = "FILE", description = "Write what Readback says into this WAV file.")
    private @Nullable Path speakTo;

    @Mixin
    private OverwriteOption overwrite = new OverwriteOption();

    /** Something that speaks into the file asked for; owns voice and file. */
    static final class Speaker implements Teller {
        private final Voice engine;
        private final SpokenConversation conversation;
        private final Path file;
        private final SpeakingAudience audience;

        private Speaker(Voice engine, SpokenConversation conversation, Path file, Console console) {
            this.engine = engine;
            this.conversation = conversation;
            this.file = file;
            this.audience = new SpeakingAudience(engine, conversation, console::complain);
        }

        SpeakingAudience audience() {
            return audience;
        }

        String name() {
            return engine.name();
        }

        @Override
        public void speak(String text) {
            try {
                conversation.say(engine.speak(text));
            } catch (IOException | VoiceFailedException e) {
                throw new CommandFailure("Speaking into '" + file + "' failed: " + e.getMessage() + ".");
            }
        }

        @Override
        public void play(Samples sound, double pauseSeconds) {
            try {
                conversation.listen(pauseSeconds);
                conversation.say(sound);
            } catch (IOException e) {
                throw new CommandFailure("The sound file '" + file + "' cannot be written: " + e.getMessage() + ".");
            }
        }

        @Override
        public String summary() {
            return String.format(
                    Locale.ROOT, "Spoken side: %s (%.1f s, %s)", file, conversation.seconds(), engine.name());
        }

        @Override
        public void close() {
            try {
                conversation.close();
            } catch (IOException e) {
                throw new CommandFailure(
                        "The sound file '" + file + "' could not be finished: " + e.getMessage() + ".");
            } finally {
                engine.close();
            }
        }
    }

    /** The speaker, if a file was asked for. */
    Optional<Speaker> open(Console console) {
        if (speakTo == null) {
            return Optional.empty();
        }
        OutputFile.at(speakTo, overwrite.force());
        Voice engine = engine();
        try {
            return Optional.of(new Speaker(engine, SpokenConversation.in(speakTo), speakTo, console));
        } catch (IOException e) {
            engine.close();
            throw new CommandFailure("The sound file '" + speakTo + "' cannot be written (" + e.getMessage()
                    + "): name a file in a folder that you may write to.");
        }
    }

    /** Refuses a voice that there is not, where none speaks too. */
    void check() {
        if (voice != null) {
            choice(voice);
        }
    }

    private Voice engine() {
        try {
            return choice(voice == null ? "embedded" : voice).open(home());
        } catch (VoiceFailedException e) {
            throw new CommandFailure(e);
        }
    }

    /** The voice of a live session: the one asked for, else the best there is. */
    Voice live() {
        return live(voice);
    }

    /** The same for the name of one, or the best there is where none is named. */
    static Voice live(@Nullable String voice) {
        try {
            return voice == null ? VoiceChoice.best(home()) : choice(voice).open(home());
        } catch (VoiceFailedException e) {
            throw new CommandFailure(e);
        }
    }

    /** The distribution's folder. */
    static Path home() {
        return Path.of(System.getProperty(HOME, "."));
    }

    private static VoiceChoice choice(String voice) {
        for (VoiceChoice choice : VoiceChoice.values()) {
            if (ConstantName.of(choice).equals(voice.toLowerCase(Locale.ROOT))) {
                return choice;
            }
        }
        throw new CommandFailure("--voice is embedded, flite, system or none, not '" + voice + "'.");
    }
}
