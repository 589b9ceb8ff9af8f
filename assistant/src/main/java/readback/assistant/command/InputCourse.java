package readback.assistant.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.record.SessionRecord;
import readback.assistant.session.Alarm;
import readback.assistant.session.Audience;
import readback.assistant.session.PlainAudience;
import readback.assistant.session.PlainLines;
import readback.assistant.session.Session;
import readback.prompts.text.Language;

/**
 * A session whose time comes with its input; the conversation is printed, and spoken into a file where one is wanted.
 */
final class InputCourse implements SessionLauncher.Course {

    /** Where the events come from. */
    interface Input {
        /** Feeds the session until it is closed or there is no more. */
        void feed(Session session, Alarm alarm, PlainLines lines, Instant start);
    }

    private final Console console;
    private final Optional<VoiceOptions.Speaker> speaker;
    private final boolean echo;
    private final Input input;
    private final List<Audience> more;

    /** @param echo whether the technician's words are printed too */
    InputCourse(Console console, Optional<VoiceOptions.Speaker> speaker, boolean echo, Input input) {
        this(console, speaker, echo, input, List.of());
    }

    /** @param more who follows the session besides */
    InputCourse(
            Console console, Optional<VoiceOptions.Speaker> speaker, boolean echo, Input input, List<Audience> more) {
        this.more = List.copyOf(more);
        this.console = console;
        this.speaker = speaker;
        this.echo = echo;
        this.input = input;
    }

    @Override
    public Session run(SessionLauncher.Opening opening) {
        Alarm alarm = new Alarm();
        List<Audience> audiences = new ArrayList<>();
        audiences.add(alarm);
        audiences.addAll(more);
        PlainLines lines = console.lines(Language.english());
        audiences.add(new PlainAudience(lines, echo));
        speaker.ifPresent(each -> audiences.add(each.audience()));
        if (opening.record().waiting() > 0) {
            console.complain(notKept(opening.record()));
        }
        Session session = opening.with().apply(audiences);
        input.feed(session, alarm, lines, opening.start());
        lines.end();
        return session;
    }

    /** Why a record has not begun on the disk yet, and what to do. */
    private static String notKept(SessionRecord record) {
        return "the record cannot be written to '" + record.folder() + "' ("
                + record.flush().orElse("it works again") + "): the session is in memory only until it can. Make that"
                + " folder writable, or begin again with another one named by --sessions.";
    }

    @Override
    public List<String> summary(Session session) {
        return speaker.map(VoiceOptions.Speaker::summary).stream().toList();
    }
}
