package readback.assistant.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Pending;
import readback.assistant.dialogue.State;
import readback.assistant.language.Names;
import readback.assistant.session.Session;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;

/** What can be answered by touch at each moment. */
final class Options {

    /** As many as fit the screen; the refrigerants met most often come first, the others are said or typed. */
    private static final int MOST = 12;

    private final Grammar grammar;
    private final Checklists checklists;
    private final Names names;
    private final ScreenTexts texts;

    Options(Grammar grammar, Checklists checklists, Names names, ScreenTexts texts) {
        this.grammar = grammar;
        this.checklists = checklists;
        this.names = names;
        this.texts = texts;
    }

    List<View.Option> of(Session session) {
        State state = session.state();
        if (state.held()) {
            return List.of(fixed("carry-on"));
        }
        Optional<Pending> pending = state.conversation().pending();
        if (pending.isPresent()) {
            if (pending.get().choice().isPresent()) {
                return choices(pending.get().choice().get());
            }
            List<Reading> candidates = pending.get().candidates();
            return candidates.isEmpty()
                    ? List.of(fixed("yes"), fixed("no"))
                    : Stream.concat(candidates.stream().map(Options::value), Stream.of(fixed("no")))
                            .toList();
        }
        if (!state.warnings().unheeded().isEmpty()) {
            return List.of(fixed("understood"));
        }
        Expectation expectation = session.expectation();
        List<View.Option> answers = step(state, expectation).map(this::ofTask).orElse(List.of());
        return answers.isEmpty() ? expectation.choice().map(this::choices).orElse(List.of()) : answers;
    }

    private static View.Option value(Reading reading) {
        String shown = Fact.amount(reading).shown();
        String number = reading.value().toPlainString();
        // a decimal of pounds is not what was said
        return new View.Option(shown, reading.unit() == Unit.POUND_AND_OUNCES ? shown : number);
    }

    private Optional<Step> step(State state, Expectation expectation) {
        return checklists
                .job(state.job())
                .flatMap(job -> job.step(expectation.step()))
                .map(Job.Placed::step);
    }

    private List<View.Option> ofTask(Step step) {
        return switch (step.task().reply()) {
            case YES_OR_NO -> List.of(fixed("yes"), fixed("no"));
            case FINISH -> List.of(fixed("finish"));
            case DONE -> List.of(fixed("understood"));
            case VALUE, OPTION, TIME, NOTHING -> List.of();
        };
    }

    private List<View.Option> choices(String set) {
        return grammar.choices().options(set).stream()
                .limit(MOST)
                .map(option -> new View.Option(
                        label(set, option),
                        grammar.choices().phrases(set, option).get(0)))
                .toList();
    }

    boolean isChoice(String slot) {
        return grammar.choices().sets().contains(slot);
    }

    /** What stands for an option: its name with a capital. */
    String label(String set, String option) {
        return Names.capital(names.option(set, option));
    }

    private View.Option fixed(String name) {
        return new View.Option(texts.of("option." + name), texts.of("option." + name + ".words"));
    }
}
