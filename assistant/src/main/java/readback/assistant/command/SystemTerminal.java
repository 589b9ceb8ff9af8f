package readback.assistant.command;

import java.io.IOException;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** The terminal that the program was started in. */
final class SystemTerminal {

    private SystemTerminal() {}

    /** The terminal, if input and output are one that can do more than print. */
    static Optional<Terminal> open() {
        try {
            Terminal terminal = TerminalBuilder.builder()
                    .system(true)
                    .systemOutput(TerminalBuilder.SystemOutput.SysOut)
                    .dumb(false)
                    // asking the terminal for its clusters would swallow what was typed already
                    .graphemeCluster(false)
                    .build();
            if (terminal.getType().startsWith(Terminal.TYPE_DUMB)) {
                terminal.close();
                return Optional.empty();
            }
            return Optional.of(terminal);
        } catch (IOException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    /** Whether it shows block letters. */
    static boolean showsBlocks(Terminal terminal) {
        return terminal.encoding().newEncoder().canEncode("█▀▄■□");
    }
}
