package readback.assistant.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A record as it was read.
 *
 * @param entries in order, up to the first line that could not be trusted
 * @param fault what is wrong and on which line; empty when the whole chain holds
 */
public record RecordedSession(Header header, List<Entry> entries, Optional<String> fault) {

    public RecordedSession {
        entries = List.copyOf(entries);
    }

    /**
     * Reads a session's folder or its file.
     *
     * @throws RecordUnavailableException when not even the header can be read
     */
    public static RecordedSession read(Path session) throws RecordUnavailableException {
        Path file = Files.isDirectory(session) ? session.resolve(SessionRecord.FILE) : session;
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new RecordUnavailableException(
                    "There is no session record at '" + session + "': name a session's folder.", e);
        } catch (IOException e) {
            throw new RecordUnavailableException("The record '" + file + "' cannot be read: " + e.getMessage(), e);
        }
        return parse(new String(bytes, StandardCharsets.UTF_8), file);
    }

    private static RecordedSession parse(String text, Path file) throws RecordUnavailableException {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        boolean torn = !lines.get(lines.size() - 1).isEmpty();
        String last = lines.remove(lines.size() - 1);
        if (lines.isEmpty()) {
            throw new RecordUnavailableException("'" + file + "' holds no session: its first line is missing.");
        }
        Header header;
        try {
            header = Lines.header(lines.get(0));
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new RecordUnavailableException("'" + file + "' is no session record: " + e.getMessage() + ".", e);
        }
        List<Entry> entries = new ArrayList<>();
        Optional<String> fault = Optional.empty();
        String previous = Chain.START;
        for (int i = 0; i < lines.size() && fault.isEmpty(); i++) {
            String line = lines.get(i);
            Optional<String> hash = Chain.hashOf(line);
            if (hash.isEmpty()) {
                fault = Optional.of("line " + (i + 1) + " was changed or damaged: its hash does not fit its content");
            } else if (!Lines.previous(line).equals(previous)) {
                fault = Optional.of("line " + (i + 1) + " does not follow the line before it");
            } else {
                previous = hash.get();
                fault = i == 0 ? Optional.empty() : add(line, i, entries);
            }
        }
        if (fault.isEmpty() && torn) {
            fault = Optional.of("line " + (lines.size() + 1) + " was cut off while it was written (" + last.length()
                    + " characters); everything before it holds");
        }
        return new RecordedSession(header, entries, fault);
    }

    private static Optional<String> add(String line, int index, List<Entry> entries) {
        try {
            entries.add(Lines.entry(line));
            return Optional.empty();
        } catch (RuntimeException e) {
            return Optional.of("line " + (index + 1) + " cannot be read: " + e.getMessage());
        }
    }
}
