package readback.assistant.screen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import readback.assistant.dialogue.Answer;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.Probes;
import readback.assistant.dialogue.Turn;
import readback.assistant.language.Names;
import readback.assistant.session.Audience;
import readback.assistant.session.Line;
import readback.assistant.session.Session;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Estimate;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Contradiction;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.UnitSetting;
import readback.calc.targets.Target;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;

/**
 * Follows a session and makes its {@link View}: what was said and heard last, and everything that the state knows.
 * Owned by the session's thread.
 */
public final class Board implements Audience {

    /** Every caution is said with this text. */
    private static final String CAUTION = "caution.say";

    /**
     * A caution on the screen.
     *
     * @param step what was asked when it was given
     */
    private record Posted(Optional<CautionRule> rule, String text, String step) {}

    private final Names names;
    private final ScreenTexts texts;
    private final UnitSetting units;
    private final Options options;
    private final Function<Expectation, Optional<View.AtUnit>> atUnit;
    private final List<Posted> posted = new ArrayList<>();
    private List<String> answers = List.of();
    private String question = "";
    private View.Heard heard = View.Heard.NOTHING;
    private List<CautionRule> warnedOf = List.of();
    private boolean fresh;
    private boolean asks = true;
    private List<ProbeReport> showing = List.of();

    public Board(Grammar grammar, Checklists checklists, Language language, UnitSetting units) {
        this(grammar, checklists, language, units, asked -> Optional.empty());
    }

    /** @param atUnit what is to be seen at the unit of a practice call while something is asked */
    public Board(
            Grammar grammar,
            Checklists checklists,
            Language language,
            UnitSetting units,
            Function<Expectation, Optional<View.AtUnit>> atUnit) {
        this.atUnit = atUnit;
        this.names = new Names(language);
        this.texts = new ScreenTexts(language);
        this.units = units;
        this.options = new Options(grammar, checklists, names, texts);
    }

    @Override
    public void happened(Event event, Turn turn) {
        if (event instanceof Event.Heard words) {
            String first = words.hypotheses().isEmpty()
                    ? ""
                    : words.hypotheses().get(0).words();
            heard = new View.Heard(first, false, names.understood(turn.outcome().understood()));
        }
        warnedOf = turn.outcome().cautions();
        asks = !(event instanceof Event.DeviceLost
                || event instanceof Event.ClockChanged
                || event instanceof Event.Measured);
    }

    @Override
    public void says(List<Line> lines) {
        List<CautionRule> rules = new ArrayList<>(warnedOf);
        // what is spoken counts most and so comes last, where the screen cuts least
        List<String> quiet = new ArrayList<>();
        List<String> aloud = new ArrayList<>();
        for (Line line : lines) {
            if (line.message().key().equals(CAUTION)) {
                Optional<CautionRule> rule = rules.isEmpty() ? Optional.empty() : Optional.of(rules.remove(0));
                posted.removeIf(each -> each.text().equals(line.shown()));
                posted.add(new Posted(rule, line.shown(), ""));
            } else {
                (line.spoken().isEmpty() ? quiet : aloud).add(line.shown());
            }
        }
        List<String> others = new ArrayList<>(quiet);
        others.addAll(aloud);
        if (!asks) {
            answers = others;
        } else if (!others.isEmpty()) {
            question = others.get(others.size() - 1);
            answers = others.subList(0, others.size() - 1);
        }
        fresh = true;
    }

    /** Words while someone is still speaking. */
    public void partial(String words) {
        if (!words.isEmpty()) {
            heard = new View.Heard(words, true, "");
        }
    }

    /** What probes show now, steady or not. */
    public void showing(List<ProbeReport> live) {
        showing = List.copyOf(live);
    }

    /** Everything that is to be seen now. */
    public View view(Session session, View.Status status, List<String> timers, String hint) {
        Assessment assessment = session.assessment();
        keepPosted(session);
        return new View(
                posted.stream().map(Posted::text).toList(),
                question,
                answers,
                heard,
                readings(session, assessment),
                workedOut(session, assessment),
                verdict(session, assessment),
                session.closed() ? List.of() : options.of(session),
                timers,
                session.state().held(),
                status,
                hint,
                atUnit.apply(session.expectation()),
                showing.stream()
                        .map(report -> probe(session.state().probes(), report))
                        .toList());
    }

    /** What a probe shows; where it is offered, the value that would be taken. */
    private View.Row probe(Probes probes, ProbeReport report) {
        int number = report.probe().number();
        Optional<Quantity> place = probes.place(number);
        String name = place.map(quantity -> names.slot(Slot.of(quantity))).orElse(texts.of("probe.unnamed"));
        Optional<Fact.Amount> offered = Optional.of(report.quality())
                .filter(ProbeReport.Quality.STEADY::equals)
                .flatMap(steady -> place)
                .flatMap(probes::offer)
                .map(given -> Fact.amount(given.reading()));
        String value = offered.or(() -> report.value().map(each -> new Fact.Amount(each.value(), each.unit())))
                .map(Fact.Amount::shown)
                .orElse("-");
        boolean unusable = report.quality() == ProbeReport.Quality.STEADY && offered.isEmpty() && place.isPresent();
        ProbeReport.Quality quality = unusable ? ProbeReport.Quality.IMPOSSIBLE : report.quality();
        return new View.Row(
                texts.of("probe", number, name), value, texts.of("probe.quality." + ConstantName.of(quality)));
    }

    /** A caution stays until it was acknowledged or, where none is asked for, while the same step is asked. */
    private void keepPosted(Session session) {
        String step = session.expectation().step();
        if (fresh) {
            fresh = false;
            posted.replaceAll(each -> each.step().isEmpty() ? new Posted(each.rule(), each.text(), step) : each);
        }
        Set<CautionRule> unheeded = session.state().warnings().unheeded();
        posted.removeIf(each ->
                each.rule().filter(unheeded::contains).isEmpty() && !each.step().equals(step));
    }

    private List<View.Row> readings(Session session, Assessment assessment) {
        Set<Quantity> contradicting = new HashSet<>();
        assessment.judgement().stream()
                .flatMap(judgement -> judgement.contradictions().stream())
                .map(Contradiction::between)
                .forEach(contradicting::addAll);
        List<View.Row> rows = new ArrayList<>();
        session.state()
                .sheet()
                .answers()
                .forEach((slot, answer) -> answer.fold(row(slot, contradicting)).ifPresent(rows::add));
        return rows;
    }

    /** How an answer is shown; empty for one that is not. */
    private Answer.Cases<Optional<View.Row>> row(Slot slot, Set<Quantity> contradicting) {
        return new Answer.Cases<>() {
            @Override
            public Optional<View.Row> value(Answer.Value value) {
                Quantity quantity = value.reading().quantity();
                String mark = contradicting.contains(quantity)
                        ? texts.of("mark.contradicts")
                        : value.confirmed() ? texts.of("mark.confirmed") : "";
                return Optional.of(
                        new View.Row(names.slot(Slot.of(quantity)), amount(Fact.amount(value.reading())), mark));
            }

            @Override
            public Optional<View.Row> option(Answer.Option option) {
                return options.isChoice(slot.id())
                        ? Optional.of(new View.Row(names.slot(slot), options.label(slot.id(), option.option()), ""))
                        : Optional.empty();
            }

            @Override
            public Optional<View.Row> passed(Answer.Passed passed) {
                return Optional.empty();
            }

            @Override
            public Optional<View.Row> skipped(Answer.Skipped skipped) {
                return Optional.of(new View.Row(names.slot(slot), "-", texts.of("mark.skipped")));
            }
        };
    }

    private static String amount(Fact fact) {
        return ((Fact.Amount) fact).shown();
    }

    /** Nothing while the technician is examined. */
    private List<View.Figure> workedOut(Session session, Assessment assessment) {
        return session.state().examined()
                ? List.of()
                : assessment.judgement().map(this::figures).orElse(List.of());
    }

    /** The number that decides by this method comes first, with its target. */
    private List<View.Figure> figures(Judgement judgement) {
        boolean bySuperheat = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT;
        Optional<View.Figure> superheat = judgement
                .superheat()
                .map(Estimate::value)
                .map(value -> figure("superheat", Fact.difference(value, units), bySuperheat));
        Optional<View.Figure> subcooling = judgement
                .subcooling()
                .map(Estimate::value)
                .map(value -> figure("subcooling", Fact.difference(value, units), !bySuperheat));
        Optional<View.Figure> target = judgement
                .target()
                .map(Target::value)
                .map(value -> figure("target", Fact.difference(value, units), true));
        return Stream.of(
                        bySuperheat ? superheat : subcooling,
                        target,
                        bySuperheat ? subcooling : superheat,
                        judgement.evaporatingSaturation().map(value -> saturation("evaporating", value)),
                        judgement.condensingSaturation().map(value -> saturation("condensing", value)))
                .flatMap(Optional::stream)
                .toList();
    }

    private View.Figure saturation(String label, Temperature value) {
        return figure(label, (Fact.Amount) Fact.temperature(value, units), false);
    }

    private View.Figure figure(String label, Fact.Amount amount, boolean deciding) {
        return new View.Figure(
                texts.of("figure." + label),
                amount.value().toPlainString(),
                amount.unit().symbol(),
                deciding);
    }

    private Optional<View.Verdict> verdict(Session session, Assessment assessment) {
        if (session.state().announced(Judged.CHARGE).isEmpty()) {
            return Optional.empty();
        }
        return assessment
                .judgement()
                .map(Judgement::verdict)
                .filter(verdict -> verdict.kind() != Verdict.Kind.INCOMPLETE)
                .map(verdict -> new View.Verdict(
                        names.constant("verdict", verdict.kind()).toUpperCase(Locale.ROOT),
                        verdict.borderline() ? texts.of("verdict.borderline") : ""));
    }
}
