package readback.assistant.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.record.About;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.SessionRecord;
import readback.assistant.session.Build;
import readback.assistant.session.Session;
import readback.prompts.text.Wording;

/**
 * A folder for the records of calls to look at: each a session's folder, as {@code readback replay} reads it, beside a
 * text file with what was truly said. Marked as practice.
 */
public final class KeptCalls {

    private final Path folder;
    private final Dialogue dialogue;
    private final Wording wording;
    private final Map<String, String> parts;

    /** @param parts what takes part, for the record's first line */
    public KeptCalls(Path folder, Dialogue dialogue, Wording wording, Map<String, String> parts) {
        this.folder = folder;
        this.dialogue = dialogue;
        this.wording = wording;
        this.parts = Map.copyOf(parts);
    }

    /**
     * Keeps a call that is over.
     *
     * @param name of the session
     * @param said lines for the reader: what the call was, then what was said
     * @throws RecordUnavailableException when the folder does not take it
     */
    void keep(String name, List<Event> events, List<String> said) throws RecordUnavailableException {
        Event.Started started = (Event.Started) events.get(0);
        Header header = new Header(
                        name, started.at(), Build.ofThisProgram().name(), parts, Map.of(About.PRACTICE, name))
                .in(ZoneOffset.UTC);
        try (SessionRecord record = SessionRecord.create(folder, header)) {
            Session session = Session.open(dialogue, wording, record, List.of(), started.settings(), started.at());
            events.subList(1, events.size()).forEach(session::on);
            if (record.waiting() > 0) {
                throw new RecordUnavailableException("The record of " + name + " could not be written to '" + folder
                        + "': free some space, or name another folder with --keep.");
            }
            Files.write(folder.resolve(name + ".txt"), said);
        } catch (IOException e) {
            throw new RecordUnavailableException(
                    "What was said in " + name + " could not be written to '" + folder + "' (" + e.getMessage()
                            + "): name another folder with --keep.",
                    e);
        }
    }
}
