package readback.assistant.command;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import readback.assistant.microphone.MicrophoneFinder;

/** Which microphone is listened to. */
final class MicrophoneOption {

    @Option(
            names = "--microphone",
            paramLabel = "NAME",
            description = "Part of the microphone's name. Default: the system's choice.")
    private @Nullable String name;

    MicrophoneFinder.Socket socket() {
        return MicrophoneFinder.named(Optional.ofNullable(name));
    }

    /** Whether there is one now. */
    boolean there() {
        return MicrophoneFinder.there(Optional.ofNullable(name));
    }
}
