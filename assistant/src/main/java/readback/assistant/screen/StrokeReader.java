package readback.assistant.screen;

import java.io.IOError;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jline.keymap.BindingReader;
import org.jline.keymap.KeyMap;
import org.jline.reader.EndOfFileException;
import org.jline.terminal.MouseEvent;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.MouseSupport;
import org.jline.utils.Curses;
import org.jline.utils.InfoCmp;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.NonBlockingReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads keys and touches from a terminal on a thread of its own. A key is known by what the description of the terminal
 * says that it sends, and by what xterm sends, which most terminals follow whatever they call themselves. Sequences
 * that mean nothing here are passed over whole.
 */
public final class StrokeReader implements AutoCloseable {

    /** Within a key's sequence characters follow at once; a longer wait means that escape itself was pressed. */
    private static final long SEQUENCE_MILLIS = 50;

    private static final long POLL_MILLIS = 200;

    private static final int FUNCTION_KEYS = 12;

    private static final String XTERM = "xterm-256color";

    /** Control sequence introducer and single shift three (ECMA-48), in seven bits. */
    private static final String CSI = KeyMap.esc() + "[";

    private static final String SS3 = KeyMap.esc() + "O";

    private static final Map<Stroke.Key, Capability> CAPABILITIES = new EnumMap<>(Map.of(
            Stroke.Key.UP, Capability.key_up,
            Stroke.Key.DOWN, Capability.key_down,
            Stroke.Key.LEFT, Capability.key_left,
            Stroke.Key.RIGHT, Capability.key_right,
            Stroke.Key.HOME, Capability.key_home,
            Stroke.Key.END, Capability.key_end,
            Stroke.Key.PAGE_UP, Capability.key_ppage,
            Stroke.Key.PAGE_DOWN, Capability.key_npage));

    static {
        for (int number = 1; number <= FUNCTION_KEYS; number++) {
            CAPABILITIES.put(Stroke.Key.valueOf("F" + number), Capability.valueOf("key_f" + number));
        }
    }

    /** The last characters of the cursor keys where the terminal is not in keypad mode. */
    private static final Map<Stroke.Key, String> CURSOR = Map.of(
            Stroke.Key.UP, "A",
            Stroke.Key.DOWN, "B",
            Stroke.Key.RIGHT, "C",
            Stroke.Key.LEFT, "D",
            Stroke.Key.HOME, "H",
            Stroke.Key.END, "F");

    private final Terminal terminal;
    private final BindingReader reader;
    private final KeyMap<Supplier<Optional<Stroke>>> keys = new KeyMap<>();
    private final Consumer<Stroke> out;
    private final Runnable gone;
    private final Thread thread = new Thread(this::run, "keys");
    private volatile boolean stopped;

    /**
     * @param out gets every stroke, on the reading thread
     * @param gone called when the terminal is gone
     */
    public StrokeReader(Terminal terminal, Consumer<Stroke> out, Runnable gone) {
        this.terminal = terminal;
        this.reader = new BindingReader(terminal.reader());
        this.out = out;
        this.gone = gone;
        bind();
        thread.setDaemon(true);
    }

    private void bind() {
        keys.setAmbiguousTimeout(SEQUENCE_MILLIS);
        keys.setNomatch(this::typed);
        keys.setUnicode(this::typed);
        pressed(Stroke.Key.ESCAPE, KeyMap.esc());
        pressed(Stroke.Key.ENTER, "\r");
        pressed(Stroke.Key.ENTER, "\n");
        pressed(Stroke.Key.TAB, "\t");
        pressed(Stroke.Key.BACKSPACE, KeyMap.ctrl('H'));
        pressed(Stroke.Key.BACKSPACE, KeyMap.del());
        pressed(Stroke.Key.INTERRUPT, KeyMap.ctrl('C'));
        // another key that alt is held with
        KeyMap.range("\\ -~").forEach(held -> keys.bind(Optional::empty, KeyMap.alt(held)));
        Map<Capability, String> xterm = new EnumMap<>(Capability.class);
        InfoCmp.parseInfoCmp(InfoCmp.getDefaultInfoCmp(XTERM), new HashSet<>(), new HashMap<>(), xterm);
        CAPABILITIES.forEach((key, capability) -> {
            pressed(key, Curses.tputs(xterm.get(capability)));
            pressed(key, KeyMap.key(terminal, capability));
        });
        CURSOR.forEach((key, last) -> pressed(key, CSI + last));
        keys.bind(this::touched, MouseSupport.keys(terminal));
        keys.bind(this::passedOver, CSI);
        keys.bind(this::passedOver, SS3);
        // the longest binding that fits counts: whatever begins like a key and goes on otherwise
        for (String sequence : List.copyOf(keys.getBoundKeys().keySet())) {
            for (int length = CSI.length(); length < sequence.length(); length++) {
                keys.bindIfNotBound(this::passedOver, sequence.substring(0, length));
            }
        }
    }

    private void pressed(Stroke.Key key, @Nullable String sequence) {
        if (sequence != null) {
            keys.bind(() -> Optional.of(new Stroke.Pressed(key)), sequence);
        }
    }

    /** Begins to read. */
    public void start() {
        thread.start();
    }

    private void run() {
        try {
            while (!stopped) {
                if (reader.peekCharacter(POLL_MILLIS) != NonBlockingReader.READ_EXPIRED) {
                    Supplier<Optional<Stroke>> bound = reader.readBinding(keys);
                    if (bound == null) {
                        throw new EndOfFileException();
                    }
                    bound.get().ifPresent(out);
                }
            }
        } catch (EndOfFileException | IOError e) {
            if (!stopped) {
                stopped = true;
                gone.run();
            }
        }
    }

    private Optional<Stroke> typed() {
        return Optional.of(new Stroke.Typed(reader.getLastBinding().codePointAt(0)));
    }

    /** A release, the wheel, or another button than the first is no touch, nor is a broken report. */
    private Optional<Stroke> touched() {
        MouseEvent event = terminal.readMouseEvent(reader::readCharacter, reader.getLastBinding());
        return event.getType() == MouseEvent.Type.Pressed
                        && event.getButton() == MouseEvent.Button.Button1
                        && event.getModifiers().isEmpty()
                        && event.getX() >= 0
                        && event.getY() >= 0
                ? Optional.of(new Stroke.Touched(event.getX(), event.getY()))
                : Optional.empty();
    }

    /** Reads what is left of a sequence; one that is cut off ends where nothing follows. */
    private Optional<Stroke> passedOver() {
        boolean last = false;
        while (!last && reader.peekCharacter(SEQUENCE_MILLIS) != NonBlockingReader.READ_EXPIRED) {
            int read = reader.readCharacter();
            // ECMA-48: parameters lie below 4/0
            last = read < 0 || read >= '@';
        }
        return Optional.empty();
    }

    @Override
    public void close() {
        stopped = true;
    }
}
