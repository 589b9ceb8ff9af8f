package readback.assistant.command;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import readback.assistant.voice.LineLoudspeaker;
import readback.assistant.voice.Loudspeaker;

/** Which loudspeaker is heard. */
final class LoudspeakerOption {

    @Option(
            names = "--loudspeaker",
            paramLabel = "NAME",
            description = "Part of the loudspeaker's name. Default: the system's choice.")
    private @Nullable String name;

    Loudspeaker loudspeaker() {
        return new LineLoudspeaker(Optional.ofNullable(name));
    }
}
