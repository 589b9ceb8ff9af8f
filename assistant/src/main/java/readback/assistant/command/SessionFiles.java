package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import readback.assistant.archive.Archive;
import readback.assistant.dialogue.Event;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;

/** Reading records and writing files for the commands that work on finished sessions. */
final class SessionFiles {

    private static final String LAST = "last";

    /** More than so many names are not listed. */
    private static final int MOST_NAMED = 5;

    private SessionFiles() {}

    /** The record in a session's folder or file. */
    static RecordedSession read(Path session) {
        try {
            return RecordedSession.read(session);
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** The record, which must have events that begin with a start. */
    static RecordedSession readWithEvents(Path session) {
        RecordedSession recorded = read(session);
        if (recorded.entries().isEmpty()) {
            throw new CommandFailure("The record '" + session + "' holds no event that can be trusted"
                    + recorded.fault().map(fault -> ": " + fault).orElse("") + ".");
        }
        if (!(recorded.entries().get(0).event() instanceof Event.Started)) {
            throw new CommandFailure("The record '" + session
                    + "' does not begin with the start of a session: no version" + " of Readback made it.");
        }
        return recorded;
    }

    /**
     * The folder of a session: a path, a name among the sessions or the beginning of one, or "last" for the latest that
     * was left open.
     */
    static Path named(Path sessions, String name) {
        Path path = path(name);
        if (Files.exists(path)) {
            return path;
        }
        List<Path> folders = folders(sessions);
        if (name.equals(LAST)) {
            return folders.stream()
                    .filter(SessionFiles::leftOpen)
                    .findFirst()
                    .orElseThrow(() -> new CommandFailure("No session in '" + sessions + "' was left open."));
        }
        List<Path> alike = folders.stream()
                .filter(folder -> folder.getFileName().toString().startsWith(name))
                .toList();
        if (alike.size() > 1) {
            throw new CommandFailure("More than one session begins with '" + name + "': "
                    + alike.stream()
                            .limit(MOST_NAMED)
                            .map(folder -> folder.getFileName().toString())
                            .collect(Collectors.joining(", "))
                    + (alike.size() > MOST_NAMED ? ", ..." : "") + ". Name one with more of its letters.");
        }
        return alike.isEmpty() ? path : alike.get(0);
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new CommandFailure("There is no session '" + name + "'.");
        }
    }

    /** The latest first; none where the folder cannot be listed. */
    private static List<Path> folders(Path sessions) {
        try {
            List<Path> folders = new ArrayList<>(Archive.in(sessions).folders());
            Collections.reverse(folders);
            return folders;
        } catch (IOException e) {
            return List.of();
        }
    }

    private static boolean leftOpen(Path session) {
        try {
            RecordedSession recorded = RecordedSession.read(session);
            return !recorded.entries().isEmpty() && !recorded.closed();
        } catch (RecordUnavailableException e) {
            return false;
        }
    }
}
