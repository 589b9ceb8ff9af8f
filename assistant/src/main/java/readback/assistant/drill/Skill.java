package readback.assistant.drill;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Stream;
import readback.calc.quantity.UnitSetting;

/**
 * Something to know, asked for with numbers that are drawn anew each time.
 *
 * @param id as in "saturation-r-410a"; stays the same for good, for the reviews name it
 * @param grave whether forgetting it can hurt someone: it is then never put off for long
 * @param drawn makes a question
 */
public record Skill(String id, boolean grave, Function<Draw, Question> drawn) {

    private static final List<Skill> ALL = Stream.of(
                    SaturationSkills.all(), StateSkills.all(), VerdictSkills.all(), WorkSkills.all(), FaultSkills.all())
            .flatMap(List::stream)
            .toList();

    /** Every skill, the first ones first. */
    public static List<Skill> all() {
        return ALL;
    }

    static Skill of(String id, Function<Draw, Question> drawn) {
        return new Skill(id, false, drawn);
    }

    static Skill grave(String id, Function<Draw, Question> drawn) {
        return new Skill(id, true, drawn);
    }

    /**
     * The question of one review: the same number draws the same question again.
     *
     * @param review how often the skill was asked for before
     */
    public Question question(int review, UnitSetting units) {
        return drawn.apply(new Draw(new SplittableRandom(31L * id.hashCode() + review), units));
    }
}
