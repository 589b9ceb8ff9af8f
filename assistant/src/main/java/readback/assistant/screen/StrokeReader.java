package readback.assistant.screen;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jline.terminal.Terminal;
import org.jline.utils.NonBlockingReader;

/**
 * Reads keys and touches from a terminal on a thread of its own. Key sequences are those of xterm and the terminals
 * that follow it; touches come as mouse reports in SGR form (xterm control sequences, "Mouse Tracking").
 */
public final class StrokeReader implements AutoCloseable {

    private static final int ESC = 27;
    /** Within a key's sequence characters follow at once; a longer wait means that escape itself was pressed. */
    private static final long SEQUENCE_MILLIS = 50;

    private static final long POLL_MILLIS = 200;

    private static final Map<String, Stroke.Key> SEQUENCES = Map.ofEntries(
            Map.entry("OP", Stroke.Key.F1),
            Map.entry("OQ", Stroke.Key.F2),
            Map.entry("OR", Stroke.Key.F3),
            Map.entry("OS", Stroke.Key.F4),
            Map.entry("[11~", Stroke.Key.F1),
            Map.entry("[12~", Stroke.Key.F2),
            Map.entry("[13~", Stroke.Key.F3),
            Map.entry("[14~", Stroke.Key.F4),
            Map.entry("[[A", Stroke.Key.F1),
            Map.entry("[[B", Stroke.Key.F2),
            Map.entry("[[C", Stroke.Key.F3),
            Map.entry("[[D", Stroke.Key.F4),
            Map.entry("[[E", Stroke.Key.F5),
            Map.entry("[15~", Stroke.Key.F5),
            Map.entry("[17~", Stroke.Key.F6),
            Map.entry("[18~", Stroke.Key.F7),
            Map.entry("[19~", Stroke.Key.F8),
            Map.entry("[20~", Stroke.Key.F9),
            Map.entry("[21~", Stroke.Key.F10),
            Map.entry("[23~", Stroke.Key.F11),
            Map.entry("[24~", Stroke.Key.F12),
            Map.entry("[A", Stroke.Key.UP),
            Map.entry("[B", Stroke.Key.DOWN),
            Map.entry("[C", Stroke.Key.RIGHT),
            Map.entry("[D", Stroke.Key.LEFT),
            Map.entry("OA", Stroke.Key.UP),
            Map.entry("OB", Stroke.Key.DOWN),
            Map.entry("OC", Stroke.Key.RIGHT),
            Map.entry("OD", Stroke.Key.LEFT),
            Map.entry("[H", Stroke.Key.HOME),
            Map.entry("[F", Stroke.Key.END),
            Map.entry("OH", Stroke.Key.HOME),
            Map.entry("OF", Stroke.Key.END),
            Map.entry("[1~", Stroke.Key.HOME),
            Map.entry("[4~", Stroke.Key.END),
            Map.entry("[5~", Stroke.Key.PAGE_UP),
            Map.entry("[6~", Stroke.Key.PAGE_DOWN));

    private final NonBlockingReader reader;
    private final Consumer<Stroke> out;
    private final Runnable gone;
    private final Thread thread = new Thread(this::run, "keys");
    private volatile boolean stopped;

    /**
     * @param out gets every stroke, on the reading thread
     * @param gone called when the terminal is gone
     */
    public StrokeReader(Terminal terminal, Consumer<Stroke> out, Runnable gone) {
        this.reader = terminal.reader();
        this.out = out;
        this.gone = gone;
        thread.setDaemon(true);
    }

    /** Begins to read. */
    public void start() {
        thread.start();
    }

    private void run() {
        try {
            while (!stopped) {
                int read = reader.read(POLL_MILLIS);
                if (read == NonBlockingReader.EOF) {
                    stopped = true;
                    gone.run();
                } else if (read != NonBlockingReader.READ_EXPIRED) {
                    stroke(read).ifPresent(out);
                }
            }
        } catch (IOException e) {
            if (!stopped) {
                gone.run();
            }
        }
    }

    private Optional<Stroke> stroke(int read) throws IOException {
        return switch (read) {
            case '\r', '\n' -> pressed(Stroke.Key.ENTER);
            case '\t' -> pressed(Stroke.Key.TAB);
            case 8, 127 -> pressed(Stroke.Key.BACKSPACE);
            case 3 -> pressed(Stroke.Key.INTERRUPT);
            case ESC -> sequence();
            default -> Optional.of(new Stroke.Typed(read));
        };
    }

    private static Optional<Stroke> pressed(Stroke.Key key) {
        return Optional.of(new Stroke.Pressed(key));
    }

    private Optional<Stroke> sequence() throws IOException {
        StringBuilder sequence = new StringBuilder();
        while (!complete(sequence)) {
            int next = reader.read(SEQUENCE_MILLIS);
            if (next < 0) {
                return sequence.isEmpty() ? pressed(Stroke.Key.ESCAPE) : Optional.empty();
            }
            sequence.append((char) next);
        }
        String text = sequence.toString();
        return text.startsWith("[<")
                ? touch(text)
                : Optional.ofNullable(SEQUENCES.get(text)).map(Stroke.Pressed::new);
    }

    /** A sequence ends with a letter or a tilde, but the letter O and the brackets only introduce one. */
    private static boolean complete(StringBuilder sequence) {
        if (sequence.length() < 2 || sequence.toString().equals("[[")) {
            return !sequence.isEmpty() && sequence.charAt(0) != '[' && sequence.charAt(0) != 'O';
        }
        char last = sequence.charAt(sequence.length() - 1);
        return Character.isLetter(last) || last == '~';
    }

    /** {@code [<button;column;rowM} for a press, counted from 1; releases end with m. */
    private static Optional<Stroke> touch(String report) {
        List<String> parts = List.of(report.substring(2, report.length() - 1).split(";", -1));
        if (!report.endsWith("M") || parts.size() != 3 || !parts.get(0).equals("0")) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new Stroke.Touched(Integer.parseInt(parts.get(1)) - 1, Integer.parseInt(parts.get(2)) - 1));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    @Override
    public void close() {
        stopped = true;
    }
}
