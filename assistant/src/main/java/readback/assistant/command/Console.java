package readback.assistant.command;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import readback.assistant.session.PlainLines;
import readback.prompts.text.Language;

/**
 * Standard input and output in UTF-8, whatever the platform's default; on a console of Windows in its code page.
 *
 * @param in typed lines
 * @param out results, in UTF-8 where it is no stream of this class's own
 * @param err complaints, the same
 * @param columns finds the width of the terminal; empty where input or output is none
 */
public record Console(BufferedReader in, PrintStream out, PrintStream err, Supplier<OptionalInt> columns) {

    /** Where a terminal does not tell its width. */
    private static final int USUAL_COLUMNS = 80;

    public Console {
        out = visible(out);
        err = visible(err);
    }

    private static VisibleStream visible(PrintStream stream) {
        return stream instanceof VisibleStream already ? already : new VisibleStream(stream, StandardCharsets.UTF_8);
    }

    /** The process's own streams. */
    public static Console ofProcess() {
        return new Console(
                new BufferedReader(
                        new InputStreamReader(new FileInputStream(FileDescriptor.in), ConsoleEncoding.ofOutput())),
                new VisibleStream(new FileOutputStream(FileDescriptor.out), ConsoleEncoding.ofOutput()),
                new VisibleStream(new FileOutputStream(FileDescriptor.err), ConsoleEncoding.ofErrors()),
                Console::ofTerminal);
    }

    // Quick where there is none; Java 22 and later give a console to pipes too, which the builder then refuses.
    @SuppressWarnings("SystemConsoleNull")
    private static OptionalInt ofTerminal() {
        if (System.console() == null) {
            return OptionalInt.empty();
        }
        // asking the terminal for its clusters would swallow what was typed already
        try (Terminal terminal = TerminalBuilder.builder()
                .system(true)
                .dumb(false)
                .graphemeCluster(false)
                .build()) {
            int columns = terminal.getSize().getColumns();
            return OptionalInt.of(columns > 0 ? columns : USUAL_COLUMNS);
        } catch (IOException | IllegalStateException e) {
            return OptionalInt.empty();
        }
    }

    /** The conversation in plain lines, as wide as the terminal. */
    PlainLines lines(Language language) {
        return new PlainLines(out, language, columns.get());
    }

    /**
     * Hands over every line that is typed until nothing more is; an empty one only shows that one can type.
     *
     * @throws IOException when typed lines cannot be read any more
     */
    void typed(PlainLines lines, Consumer<String> words) throws IOException {
        typedWhile(lines, line -> {
            words.accept(line);
            return true;
        });
    }

    /**
     * Hands over lines that are typed until nothing more is, or no more are wanted; an empty one only shows that one
     * can type.
     *
     * @param wanted takes a line, and tells whether the next one is wanted too
     * @throws IOException when typed lines cannot be read any more
     */
    void typedWhile(PlainLines lines, Predicate<String> wanted) throws IOException {
        boolean more = true;
        for (String line = in.readLine(); line != null; line = more ? in.readLine() : null) {
            lines.entered();
            if (line.isBlank()) {
                lines.prompt();
            } else {
                more = wanted.test(line.strip());
            }
        }
    }

    void complain(String sentence) {
        err.println("readback: " + sentence);
    }
}
