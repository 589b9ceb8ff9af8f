package readback.assistant.setup;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.prompts.text.Message;

/** The way through the steps, in the order of {@link Step}; steps that do not apply are passed by. Pure. */
final class Way {

    private static final List<Step> ORDER = List.of(Step.values());

    private final Map<Step, SetupStep> steps = new EnumMap<>(Step.class);

    /**
     * @param all one of each
     * @throws IllegalArgumentException where one is missing
     */
    Way(List<SetupStep> all) {
        all.forEach(each -> steps.put(each.step(), each));
        ORDER.forEach(this::of);
    }

    SetupStep of(Step step) {
        SetupStep known = steps.get(step);
        if (known == null) {
            throw new IllegalArgumentException("nobody takes the step " + step);
        }
        return known;
    }

    /** The next step that applies. */
    Turn on(SetupState state, List<Message> told) {
        return to(ORDER.get((ORDER.indexOf(state.step()) + 1) % ORDER.size()), state, told);
    }

    /** The step before that applies. */
    Turn back(SetupState state) {
        int step = ORDER.indexOf(state.step()) - 1;
        while (!of(ORDER.get(step)).applies(state)) {
            step--;
        }
        return to(ORDER.get(step), state, List.of());
    }

    /** This step, or the next that applies. */
    Turn to(Step step, SetupState state, List<Message> told) {
        SetupState there = state.at(SetupState.Moment.at(step, told));
        SetupStep entered = of(step);
        if (!entered.applies(state)) {
            List<Message> all = new ArrayList<>(told);
            entered.missing(state).ifPresent(all::add);
            return on(entered.passedBy(there), all);
        }
        Optional<SetupEffect> begun = entered.begins();
        return begun.isPresent() ? Turn.of(there.begun(), begun.get()) : Turn.of(there);
    }
}
