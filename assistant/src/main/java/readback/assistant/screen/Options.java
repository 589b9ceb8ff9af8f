package readback.assistant.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Pending;
import readback.assistant.dialogue.State;
import readback.assistant.session.Session;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;
import readback.prompts.text.Wording;

/** What can be answered by touch at each moment. */
final class Options {

    /** As many as fit the screen; the refrigerants met most often come first, the others are said or typed. */
    private static final int MOST = 12;

    private final Grammar grammar;
    private final Checklists checklists;
    private final Wording wording;
    private final ScreenTexts texts;
    private final UnitSetting units;

    Options(Grammar grammar, Checklists checklists, Wording wording, ScreenTexts texts, UnitSetting units) {
        this.grammar = grammar;
        this.checklists = checklists;
        this.wording = wording;
        this.texts = texts;
        this.units = units;
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

    /** What stands for an option: its term in the catalogue, or its own name where that is a designation. */
    String label(String set, String option) {
        String key = "term." + set + "." + option;
        return wording.has(key)
                ? wording.shown(Message.of(key), units)
                : texts.find("option." + option).orElse(option);
    }

    private View.Option fixed(String name) {
        return new View.Option(texts.of("option." + name), texts.of("option." + name + ".words"));
    }
}
