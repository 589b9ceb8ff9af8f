package readback.assistant.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;

/** Reading records and writing files for the commands that work on finished sessions. */
final class SessionFiles {

    private SessionFiles() {}

    /** The record in a session's folder or file. */
    static RecordedSession read(Path session) {
        try {
            return RecordedSession.read(session);
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** The record, which must have events. */
    static RecordedSession readWithEvents(Path session) {
        RecordedSession recorded = read(session);
        if (recorded.entries().isEmpty()) {
            throw new CommandFailure("The record '" + session + "' holds no event that can be trusted"
                    + recorded.fault().map(fault -> ": " + fault).orElse("") + ".");
        }
        return recorded;
    }

    /** Writes a text file whole. */
    static void write(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new CommandFailure("'" + file + "' cannot be written (" + e.getMessage()
                    + "): name a file in a folder that you may write to.");
        }
    }
}
