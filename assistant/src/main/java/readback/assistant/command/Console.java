package readback.assistant.command;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Standard input and output in UTF-8, whatever the platform's default.
 *
 * @param in typed lines
 * @param out results
 * @param err complaints
 */
public record Console(BufferedReader in, PrintStream out, PrintStream err) {

    /** The process's own streams. */
    public static Console ofProcess() {
        return new Console(
                new BufferedReader(
                        new InputStreamReader(new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8)),
                new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
    }

    void complain(String sentence) {
        err.println("readback: " + sentence);
    }
}
