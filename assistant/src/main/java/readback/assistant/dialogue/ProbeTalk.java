package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Meaning;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * What is said about probes and to them. A value of a probe is only ever offered; it counts when the technician takes
 * it, and then goes the way of one that was called out. Decision 0026.
 */
final class ProbeTalk {

    /** So much further apart may be two values whose digits lie just as far apart as is allowed. */
    private static final double ROUNDING = 1e-9;

    /** A called out temperature further than this from the probe's is asked about: 3 °F, in kelvins. Decision 0026. */
    private static final double APART_KELVINS = Unit.FAHRENHEIT_DEGREES.toBase(3);

    /** The same for a pressure: 5 psi, in pascals. */
    private static final double APART_PASCALS = Unit.PSIG.toBase(5);

    private final Flow flow;
    private final Intake intake;

    ProbeTalk(Flow flow, Intake intake) {
        this.flow = flow;
        this.intake = intake;
    }

    /** Takes in what probes show: what came to stand still is offered, trouble is told once. */
    void measured(Draft draft, List<ProbeReport> reports) {
        List<Given> before = flow.offers(draft.state()).toList();
        Map<ProbeReport.Quality, List<Fact>> troubles = new EnumMap<>(ProbeReport.Quality.class);
        List<Probe> unnamed = new ArrayList<>();
        for (ProbeReport report : reports) {
            boolean known = draft.state().probes().knows(report.probe().number());
            note(draft, report);
            trouble(draft, report.probe())
                    .ifPresent(quality -> troubles.computeIfAbsent(quality, any -> new ArrayList<>())
                            .add(name(draft.state(), report.probe())));
            if (!known && draft.state().probes().place(report.probe().number()).isEmpty()) {
                unnamed.add(report.probe());
            }
        }
        boolean free = free(draft.state());
        troubles.forEach((quality, names) -> draft.say(loudly(
                free,
                Message.of("probe.trouble." + ConstantName.of(quality)).with("probes", new Fact.Listing(names)))));
        unnamed.stream()
                .findFirst()
                .ifPresent(probe -> draft.say(loudly(
                        free,
                        Message.of("probe.unnamed")
                                .with("number", new Fact.Count(probe.number()))
                                .with("kind", kind(probe.dimension())))));
        Optional<Quantity> asked = flow.next(draft.state()).flatMap(Flow::measured);
        flow.offers(draft.state())
                .filter(offer -> before.stream()
                        .noneMatch(old ->
                                old.reading().quantity() == offer.reading().quantity()))
                .forEach(offer -> {
                    boolean isAsked = asked.equals(Optional.of(offer.reading().quantity()));
                    draft.say(loudly(free && isAsked, isAsked ? offer(offer) : beside(offer)));
                });
    }

    /** Keeps what the probe shows; the mapping's word about its place counts until the technician says another. */
    private static void note(Draft draft, ProbeReport report) {
        Probes probes = draft.state().probes();
        int number = report.probe().number();
        Probes next = report.probe()
                .measures()
                .filter(quantity ->
                        !probes.knows(number) && probes.place(number).isEmpty())
                .map(quantity -> probes.placed(number, quantity))
                .orElse(probes);
        draft.become(draft.state().with(next.with(graded(draft, next, report))));
    }

    /** The report, unless its value cannot be where the probe is. */
    private static ProbeReport graded(Draft draft, Probes probes, ProbeReport report) {
        boolean impossible = report.quality() == ProbeReport.Quality.STEADY
                && probes.place(report.probe().number())
                        .flatMap(report::of)
                        .flatMap(reading -> draft.assessment().grade(reading).refused())
                        .isPresent();
        return impossible ? report.as(ProbeReport.Quality.IMPOSSIBLE) : report;
    }

    /** What is wrong with the probe, if that is to be told now. */
    private static Optional<ProbeReport.Quality> trouble(Draft draft, Probe probe) {
        Probes probes = draft.state().probes();
        ProbeReport.Quality quality =
                probes.report(probe.number()).orElseThrow().quality();
        Optional<ProbeReport.Quality> told =
                Optional.ofNullable(probes.troubles().get(probe.number()));
        if (quality == ProbeReport.Quality.STEADY) {
            draft.become(draft.state().with(probes.troubled(probe.number(), Optional.empty())));
        }
        boolean news = quality.trouble() && told.filter(quality::sameTroubleAs).isEmpty();
        if (news) {
            draft.become(draft.state().with(probes.troubled(probe.number(), Optional.of(quality))));
        }
        return Optional.of(quality).filter(any -> news);
    }

    /** By what it measures, else by its number. */
    private static Fact name(State state, Probe probe) {
        return state.probes()
                .place(probe.number())
                .map(Fact::name)
                .orElseGet(() ->
                        new Fact.Text(Message.of("probe.numbered").with("number", new Fact.Count(probe.number()))));
    }

    private static Fact kind(Dimension dimension) {
        return new Fact.Term("probe-kind." + ConstantName.of(dimension));
    }

    /** Whether nothing waits that comes first: on hold, at a caution and at a question of ours probes keep quiet. */
    private static boolean free(State state) {
        return !state.held()
                && state.unheeded().isEmpty()
                && state.conversation().pending().isEmpty();
    }

    private static Message loudly(boolean aloud, Message message) {
        return aloud ? message : message.quietly();
    }

    /** What a probe offers of the quantity that is asked for. */
    static Optional<Message> offer(State state, Quantity quantity) {
        return state.probes().offer(quantity).map(ProbeTalk::offer);
    }

    private static Message offer(Given offer) {
        return Message.of("probe.offered").with("value", new Fact.Stated(offer.reading()));
    }

    private static Message beside(Given offer) {
        return Message.of("probe.offered.beside")
                .with("value", new Fact.Stated(offer.reading()))
                .with("name", Fact.name(offer.reading().quantity()));
    }

    /**
     * "Take", or "take the suction": what is named, what is asked for, or, where nothing is, the one that is offered.
     */
    void take(Draft draft, Optional<Quantity> named, Optional<Step> asked) {
        Probes probes = draft.state().probes();
        List<Given> offers = flow.offers(draft.state()).toList();
        Optional<Quantity> meant = named.or(() -> draft.conversation().pending().flatMap(Pending::inDoubt))
                .or(() -> asked.flatMap(Flow::measured));
        // where one value is asked for, "take" never means another
        Optional<Given> wanted = meant.isPresent()
                ? probes.offer(meant.get())
                : Optional.of(offers).filter(each -> each.size() == 1).map(each -> each.get(0));
        if (wanted.isPresent()) {
            intake.offered(draft, wanted.get());
        } else if (named.isPresent()) {
            draft.say(Message.of("probe.not-offered").with("name", Fact.name(named.get())));
        } else if (offers.isEmpty()) {
            draft.say(Message.of("probe.nothing-offered"));
        } else {
            draft.say(Message.of("probe.which")
                    .with(
                            "values",
                            new Fact.Listing(offers.stream()
                                    .<Fact>map(offer -> new Fact.Stated(offer.reading()))
                                    .toList())));
        }
    }

    /** "Probe two is the suction line", read back. */
    void named(Draft draft, Meaning.ProbeNamed named) {
        Probes probes = draft.state().probes();
        Optional<ProbeReport> report = probes.report(named.number());
        Fact number = new Fact.Count(named.number());
        Fact name = Fact.name(named.quantity());
        if (report.isEmpty()) {
            draft.say(Message.of("probe.none-so-numbered").with("number", number));
        } else if (report.get().probe().dimension() != named.quantity().dimension()) {
            draft.say(Message.of("probe.other-kind")
                    .with("number", number)
                    .with("kind", kind(report.get().probe().dimension()))
                    .with("name", name));
        } else {
            Optional<Integer> before = probes.numberOf(named.quantity()).filter(other -> other != named.number());
            Probes placed = probes.placed(named.number(), named.quantity());
            draft.become(draft.state().with(placed.with(graded(draft, placed, report.get()))));
            draft.say(before.map(other -> Message.of("probe.named.instead")
                            .with("number", number)
                            .with("name", name)
                            .with("before", new Fact.Count(other)))
                    .orElseGet(() ->
                            Message.of("probe.named").with("number", number).with("name", name)));
        }
    }

    /** The question about a called out value where the probe shows another; none where it agrees or is not steady. */
    static Optional<Message> showsOtherwise(State state, Given value) {
        return apart(state, value)
                .map(shown -> Message.of("probe.otherwise")
                        .with("value", new Fact.Stated(value.reading()))
                        .with("shown", Fact.amount(shown)));
    }

    /** The same where a correction says that the called out value is meant: told, not asked. */
    static Optional<Message> stillShows(State state, Given value) {
        return apart(state, value).map(shown -> Message.of("probe.still").with("shown", Fact.amount(shown)));
    }

    private static Optional<Reading> apart(State state, Given value) {
        return value.probe().isPresent()
                ? Optional.empty()
                : state.probes()
                        .offer(value.reading().quantity())
                        .map(Given::reading)
                        .filter(shown ->
                                Math.abs(shown.base() - value.reading().base()) > limit(shown) * (1 + ROUNDING));
    }

    private static double limit(Reading shown) {
        return shown.quantity().dimension() == Dimension.TEMPERATURE ? APART_KELVINS : APART_PASCALS;
    }
}
