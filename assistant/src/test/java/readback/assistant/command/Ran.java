package readback.assistant.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import readback.assistant.Readback;

/** What came of one run of the program: exit code, output, complaints. */
record Ran(int code, String out, String err) {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Runs the program in this process with these lines on standard input. */
    static Ran of(String typed, String... arguments) {
        return of(OptionalInt.empty(), typed, arguments);
    }

    /** The same where input and output are a terminal of so many columns. */
    static Ran onTerminal(int columns, String typed, String... arguments) {
        return of(OptionalInt.of(columns), typed, arguments);
    }

    private static Ran of(OptionalInt columns, String typed, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new BufferedReader(new StringReader(typed)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> columns);
        int code = Readback.run(console, arguments);
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The last line of the output, which is JSON. */
    JsonNode lastLine() {
        try {
            List<String> lines = out.strip().lines().toList();
            return JSON.readTree(lines.get(lines.size() - 1));
        } catch (IOException e) {
            throw new AssertionError("the last line is no JSON: " + out, e);
        }
    }
}
