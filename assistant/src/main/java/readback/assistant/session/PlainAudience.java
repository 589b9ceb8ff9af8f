package readback.assistant.session;

import java.io.PrintStream;
import java.util.List;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/** The conversation as plain lines: for pipes, logs and screen readers. One thread. */
public final class PlainAudience implements Audience {

    private static final String TECHNICIAN = "technician  ";
    private static final String READBACK = "readback    ";

    private final PrintStream out;
    private final boolean echo;

    /** @param echo whether the technician's words are printed too */
    public PlainAudience(PrintStream out, boolean echo) {
        this.out = out;
        this.echo = echo;
    }

    @Override
    public void happened(Event event, Turn turn) {
        if (echo && event instanceof Event.Heard heard) {
            String words = heard.hypotheses().isEmpty()
                    ? ""
                    : heard.hypotheses().get(0).words();
            out.println(TECHNICIAN + words);
        }
        out.flush();
    }

    @Override
    public void says(List<Line> lines) {
        lines.forEach(line -> out.println(READBACK + line.shown()));
        out.flush();
    }
}
