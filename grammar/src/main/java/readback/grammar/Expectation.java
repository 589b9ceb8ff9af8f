package readback.grammar;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

/**
 * The situation in which words are understood: what was asked and what a bare number or a bare "correction" refers to.
 *
 * @param step name of the dialogue step, for vocabulary and messages
 * @param quantity the quantity asked for; a bare number fills it
 * @param choice the set of choices asked for; its options need no introduction. With yes and no as answers, a question
 *     that leads to one of them: "Is it a piston?" is answered by "it's a valve" too
 * @param last the value read back last; "correction" and "scratch that" refer to it
 * @param units the units meant when none is said
 * @param answers the commands that answer what was asked, the likeliest first: yes and no to a question
 * @param probes what probes show beside what is said
 */
public record Expectation(
        String step,
        Optional<Quantity> quantity,
        Optional<String> choice,
        Optional<Quantity> last,
        UnitSetting units,
        List<Command> answers,
        ProbesShown probes) {

    public Expectation {
        answers = List.copyOf(answers);
    }

    /** A situation without probes. */
    public Expectation(
            String step,
            Optional<Quantity> quantity,
            Optional<String> choice,
            Optional<Quantity> last,
            UnitSetting units,
            List<Command> answers) {
        this(step, quantity, choice, last, units, answers, ProbesShown.NONE);
    }

    /** A situation in which no command is likelier than another. */
    public Expectation(
            String step,
            Optional<Quantity> quantity,
            Optional<String> choice,
            Optional<Quantity> last,
            UnitSetting units) {
        this(step, quantity, choice, last, units, List.of());
    }

    /** The same situation with commands that answer the question. */
    public Expectation answeredBy(Command... commands) {
        return new Expectation(step, quantity, choice, last, units, List.of(commands), probes);
    }

    /** The same situation where probes show this. */
    public Expectation beside(ProbesShown shown) {
        return new Expectation(step, quantity, choice, last, units, answers, shown);
    }

    /** Whether this quantity is asked for. */
    boolean asks(Quantity named) {
        return quantity.isPresent() && quantity.get() == named;
    }

    /** Whether this set of choices is asked for. */
    boolean asks(String set) {
        return choice.isPresent() && choice.get().equals(set);
    }

    /** Whether yes or no answers; an option of the choice does so as well. */
    boolean isQuestion() {
        return answers.contains(Command.YES) && answers.contains(Command.NO);
    }

    /** Nothing in particular is asked; everything must be named. */
    public static Expectation open(UnitSetting units) {
        return new Expectation("open", Optional.empty(), Optional.empty(), Optional.empty(), units);
    }

    public static Expectation of(Quantity quantity, UnitSetting units) {
        return new Expectation(quantity.name(), Optional.of(quantity), Optional.empty(), Optional.empty(), units);
    }
}
