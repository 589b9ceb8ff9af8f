package readback.assistant.session;

import java.io.PrintStream;
import java.util.List;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.prompts.text.Language;

/** The conversation as plain lines: for pipes, logs and screen readers. One thread. */
public final class PlainAudience implements Audience {

    private final PrintStream out;
    private final Language language;
    private final boolean echo;

    /** @param echo whether the technician's words are printed too */
    public PlainAudience(PrintStream out, Language language, boolean echo) {
        this.out = out;
        this.language = language;
        this.echo = echo;
    }

    @Override
    public void happened(Event event, Turn turn) {
        if (echo && event instanceof Event.Heard heard) {
            String words = heard.hypotheses().isEmpty()
                    ? ""
                    : heard.hypotheses().get(0).words();
            out.println(language.margin("screen.plain.technician") + words);
        }
        out.flush();
    }

    @Override
    public void says(List<Line> lines) {
        lines.forEach(line -> out.println(language.margin("screen.plain.readback") + line.shown()));
        out.flush();
    }
}
