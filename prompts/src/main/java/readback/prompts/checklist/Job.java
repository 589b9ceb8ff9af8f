package readback.prompts.checklist;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A piece of work from start to sign-off: checklists in order, each under a condition.
 *
 * @param id unique; one of the options of the grammar's "checklist" choice set
 */
public record Job(JobId id, List<Part> parts) {

    /** A checklist and when it applies. */
    public record Part(Checklist checklist, StepCondition when) {}

    public Job {
        parts = List.copyOf(parts);
    }

    /** The steps that apply now, in order, each with its checklist. */
    public Stream<Placed> applicable(ConditionContext situation) {
        return parts.stream()
                .filter(part -> part.when().holds(situation))
                .flatMap(part -> part.checklist().steps().stream()
                        .filter(step -> step.when().holds(situation))
                        .map(step -> new Placed(part.checklist(), step)));
    }

    /** The step with this name, applicable or not. */
    public Optional<Placed> step(String id) {
        return parts.stream()
                .flatMap(part -> part.checklist().steps().stream().map(step -> new Placed(part.checklist(), step)))
                .filter(placed -> placed.step().id().equals(id))
                .findFirst();
    }

    /** A step where it stands. */
    public record Placed(Checklist checklist, Step step) {}
}
