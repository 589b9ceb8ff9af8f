package readback.assistant.screen;

import java.util.List;
import java.util.Optional;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;
import org.jspecify.annotations.Nullable;

/**
 * The screen on a terminal: the alternate buffer, drawn whole from the view, only when something changed. One thread.
 */
public final class TerminalFace implements Face {

    private final Terminal terminal;
    private final Layout layout;
    private final Typing typing;
    private final Display display;
    private final Attributes before;
    private @Nullable View shown;
    private String typed = "";
    private Frame frame = Frame.EMPTY;
    private boolean held;

    /** Takes the terminal over; {@link #close} gives it back as it was, still open. */
    public TerminalFace(Terminal terminal, Layout layout, ScreenTexts texts) {
        this.terminal = terminal;
        this.layout = layout;
        this.typing = new Typing(texts);
        this.display = new Display(terminal, true);
        this.before = terminal.enterRawMode();
        terminal.puts(Capability.enter_ca_mode);
        terminal.puts(Capability.keypad_xmit);
        terminal.puts(Capability.cursor_invisible);
        terminal.trackMouse(Terminal.MouseTracking.Normal);
        terminal.flush();
        resize();
    }

    @Override
    public void show(View view) {
        if (view.equals(shown) && typed.equals(typing.text())) {
            return;
        }
        shown = view;
        draw(view);
    }

    private void draw(View view) {
        typed = typing.text();
        held = view.held();
        Size size = terminal.getSize();
        frame = layout.frame(view, typing, Math.max(1, size.getColumns()), Math.max(1, size.getRows()));
        display.update(frame.lines(), -1);
        terminal.flush();
    }

    @Override
    public Optional<Action> on(Stroke stroke) {
        Optional<Action> action = typing.on(stroke, frame, held);
        View view = shown;
        if (view != null && action.orElse(null) instanceof Action.Redraw) {
            draw(view);
        }
        return action;
    }

    @Override
    public void renew() {
        resize();
        View view = shown;
        if (view != null) {
            draw(view);
        }
    }

    private void resize() {
        Size size = terminal.getSize();
        display.clear();
        display.resize(size);
    }

    /** What can be touched now. */
    List<Frame.Target> targets() {
        return frame.targets();
    }

    @Override
    public void close() {
        terminal.trackMouse(Terminal.MouseTracking.Off);
        terminal.puts(Capability.cursor_visible);
        terminal.puts(Capability.keypad_local);
        // Terminals that were resized meanwhile were seen to leave a row of the alternate buffer on the one before it,
        // and the cursor in the middle of a row.
        terminal.puts(Capability.clear_screen);
        terminal.puts(Capability.exit_ca_mode);
        terminal.puts(Capability.carriage_return);
        terminal.setAttributes(before);
        terminal.flush();
    }
}
