package readback.assistant.session;

import java.io.PrintStream;
import java.util.List;
import java.util.OptionalInt;
import readback.prompts.text.Language;

/**
 * Plain lines: who speaks, then what. On a terminal they are broken between words, and a prompt shows that one can
 * type; in a log a sentence is a line. Any thread.
 */
public final class PlainLines {

    /** Narrower than this nothing is broken any more. */
    private static final int NARROWEST = 30;

    private final PrintStream out;
    private final Language language;
    private final OptionalInt columns;
    private boolean prompted;

    /** @param columns of the terminal that the lines go to; empty where they go elsewhere or nobody types */
    public PlainLines(PrintStream out, Language language, OptionalInt columns) {
        this.out = out;
        this.language = language;
        this.columns = columns;
    }

    /**
     * Writes what somebody says.
     *
     * @param who key of the name at the head of the line
     */
    public synchronized void line(String who, String text) {
        end();
        String margin = language.margin(who);
        int width = columns.orElse(0) - margin.length();
        List<String> lines = width < NARROWEST ? List.of(text) : Wrapped.lines(text, width);
        String head = margin;
        for (String line : lines) {
            out.println(head + line);
            head = " ".repeat(margin.length());
        }
        out.flush();
    }

    /** The same for what nobody answers: a prompt that stood before it stands after it. */
    public synchronized void aside(String who, String text) {
        boolean before = prompted;
        line(who, text);
        if (before) {
            prompt();
        }
    }

    /** Shows that one can type, once, where somebody can. */
    public synchronized void prompt() {
        if (columns.isPresent() && !prompted) {
            out.print(language.margin("screen.plain.prompt"));
            out.flush();
            prompted = true;
        }
    }

    /** A line was typed: the prompt is used up. */
    public synchronized void entered() {
        prompted = false;
    }

    /** Leaves the line of a prompt that nothing was typed at. */
    public synchronized void end() {
        if (prompted) {
            out.println();
            prompted = false;
        }
    }
}
