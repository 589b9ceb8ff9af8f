package readback.assistant.session;

import java.util.List;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/** The conversation as plain lines: for pipes, logs and screen readers. One thread. */
public final class PlainAudience implements Audience {

    private final PlainLines lines;
    private final boolean echo;
    private boolean over;

    /** @param echo whether the technician's words are printed too */
    public PlainAudience(PlainLines lines, boolean echo) {
        this.lines = lines;
        this.echo = echo;
    }

    @Override
    public void happened(Event event, Turn turn) {
        over = turn.state().closed();
        if (echo && event instanceof Event.Heard heard) {
            String words = heard.hypotheses().isEmpty()
                    ? ""
                    : heard.hypotheses().get(0).words();
            lines.line("screen.plain.technician", words);
        }
    }

    @Override
    public void says(List<Line> said) {
        said.forEach(line -> lines.line("screen.plain.readback", line.shown()));
        if (!over) {
            lines.prompt();
        }
    }
}
