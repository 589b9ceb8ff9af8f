package readback.assistant.screen;

import java.util.List;
import java.util.Optional;
import org.jline.utils.AttributedString;

/**
 * A view laid out for one size.
 *
 * @param lines as many as the terminal has rows
 * @param targets what can be touched
 */
record Frame(List<AttributedString> lines, List<Target> targets) {

    /** A place to touch and what it asks for. */
    record Target(Area area, Action action) {}

    static final Frame EMPTY = new Frame(List.of(), List.of());

    Frame {
        lines = List.copyOf(lines);
        targets = List.copyOf(targets);
    }

    /** What is asked for by a touch there. */
    Optional<Action> at(int column, int row) {
        return targets.stream()
                .filter(target -> target.area().contains(column, row))
                .map(Target::action)
                .findFirst();
    }
}
