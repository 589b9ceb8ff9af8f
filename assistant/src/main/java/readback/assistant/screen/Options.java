package readback.assistant.screen;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Pending;
import readback.assistant.dialogue.State;
import readback.assistant.language.Names;
import readback.assistant.session.Session;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Slot;
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
    private final OfQuestion ofQuestion = new OfQuestion();

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
            return Stream.concat(
                            pending.get().fold(ofQuestion).stream(),
                            pending.get().inDoubt().stream()
                                    .filter(session.expectation().probes().offered()::contains)
                                    .flatMap(quantity -> taking(state, quantity)))
                    .toList();
        }
        if (!state.warnings().unheeded().isEmpty()) {
            return List.of(fixed("understood"));
        }
        Expectation expectation = session.expectation();
        List<View.Option> answers = step(state, expectation).map(this::ofTask).orElse(List.of());
        Stream<View.Option> taken = expectation.probes().offered().stream()
                .sorted(askedFirst(expectation))
                .flatMap(quantity -> taking(state, quantity));
        return Stream.concat(
                        (answers.isEmpty()
                                        ? expectation
                                                .choice()
                                                .map(this::choices)
                                                .orElse(List.of())
                                        : answers)
                                .stream(),
                        taken)
                .toList();
    }

    private static Comparator<Quantity> askedFirst(Expectation expectation) {
        return Comparator.<Quantity, Boolean>comparing(quantity ->
                        expectation.quantity().filter(quantity::equals).isEmpty())
                .thenComparing(Comparator.naturalOrder());
    }

    /** Takes what a probe offers. */
    private Stream<View.Option> taking(State state, Quantity quantity) {
        return state.probes().offer(quantity).stream()
                .map(offer -> new View.Option(
                        texts.of(
                                "option.take",
                                names.slot(Slot.of(quantity)),
                                Fact.amount(offer.reading()).shown()),
                        grammar.taking(quantity)));
    }

    /** What answers a question of the dialogue's own, with what each answer does. */
    private final class OfQuestion implements Pending.Cases<List<View.Option>> {

        @Override
        public List<View.Option> confirm(Pending.Confirm confirm) {
            return List.of(
                    fixed("yes", "yes.value", Fact.amount(confirm.reading()).shown()), fixed("no", "no.value"));
        }

        @Override
        public List<View.Option> between(Pending.Between between) {
            return Stream.concat(between.candidates().stream().map(Options::value), Stream.of(fixed("no", "no.either")))
                    .toList();
        }

        @Override
        public List<View.Option> movedAgain(Pending.MovedAgain movedAgain) {
            return movedAgain.choice().map(Options.this::choices).orElse(List.of());
        }

        @Override
        public List<View.Option> leave(Pending.Leave leave) {
            return List.of(fixed("yes", "yes.leave"), fixed("no", "no.leave"));
        }

        @Override
        public List<View.Option> goTo(Pending.GoTo goTo) {
            return List.of(fixed("yes"), fixed("no"));
        }
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

    /** What says the same as another option, under a label that tells what it does. */
    private View.Option fixed(String said, String label, Object... values) {
        return new View.Option(texts.of("option." + label, values), texts.of("option." + said + ".words"));
    }

    private View.Option fixed(String name) {
        return new View.Option(texts.of("option." + name), texts.of("option." + name + ".words"));
    }
}
