package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Parameters;
import readback.assistant.archive.Gathering;

/** Which folders of sessions a command looks through. */
final class SessionFolders {

    @Parameters(
            arity = "0..*",
            paramLabel = "DIR",
            description = "Folders of sessions, or trees with such folders in them, as of several tablets; each session"
                    + " counts once. Default: the user's data folder.")
    private List<Path> named = new ArrayList<>();

    /**
     * The sessions below them; a folder that is not there is refused.
     *
     * @throws IOException when one cannot be listed
     */
    Gathering gathering() throws IOException {
        List<Path> folders = named.isEmpty() ? List.of(SessionOptions.dataFolder()) : named;
        for (Path each : folders) {
            if (!Files.isDirectory(each)) {
                throw new CommandFailure("There is no folder '" + each + "': name the folder that holds the sessions.");
            }
        }
        return Gathering.below(folders);
    }

    /** That they cannot be listed. */
    CommandFailure unlisted(IOException why) {
        Path first = named.isEmpty() ? SessionOptions.dataFolder() : named.get(0);
        return new CommandFailure("The sessions in '" + first + "' cannot be listed: " + why.getMessage() + ".");
    }
}
