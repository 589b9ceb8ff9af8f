package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;

/** A new state, and what is to be done. Immutable. */
record Turn(SetupState state, List<SetupEffect> effects) {
    Turn {
        effects = List.copyOf(effects);
    }

    static Turn of(SetupState state, SetupEffect... effects) {
        return new Turn(state, List.of(effects));
    }

    /** The same, after something else was done. */
    Turn after(SetupEffect first) {
        List<SetupEffect> all = new ArrayList<>(List.of(first));
        all.addAll(effects);
        return new Turn(state, all);
    }
}
