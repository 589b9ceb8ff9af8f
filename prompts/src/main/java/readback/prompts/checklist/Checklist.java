package readback.prompts.checklist;

import java.util.List;

/**
 * Steps that belong together, in the order in which they are asked.
 *
 * @param id unique; texts are found under {@code checklist.<id>}
 * @param repeats whether a further round of measurements asks these steps again
 */
public record Checklist(String id, boolean repeats, List<Step> steps) {
    public Checklist {
        steps = List.copyOf(steps);
    }
}
