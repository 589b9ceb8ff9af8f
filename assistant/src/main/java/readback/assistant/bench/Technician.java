package readback.assistant.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Pending;
import readback.assistant.dialogue.State;
import readback.assistant.simulated.Case;
import readback.assistant.simulated.Site;
import readback.calc.charge.Correction;
import readback.calc.charge.Verdict;
import readback.calc.diagnosis.Finding;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.MeteringDevice;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Expectation;

/**
 * Answers whatever step the dialogue is at, by the step's name, and does at the unit what he is told to. He believes
 * the advice and his instruments. Owned by one thread.
 */
final class Technician {

    /** After so many moves he leaves it at that. */
    static final int MOST_MOVES = 6;

    /** How often he answers the same step with a value before he passes over it. */
    private static final int PATIENCE = 3;

    /** The same where words are misheard. */
    private static final int LONG_PATIENCE = 8;

    /** So often he corrects what was misheard; then he leaves it. */
    private static final int MOST_CORRECTIONS = 12;

    /** Amounts are spoken in steps of so many ounces. */
    private static final double LEAST_STEP = 0.5;

    private static final String LOOK = "look-";

    /** Before the right refrigerant where another one was understood. */
    static final String CHANGE = "change refrigerant to ";

    /** What can be read at the unit, in the order in which it is told unasked. */
    private static final List<Quantity> READ = List.of(
            Quantity.RETURN_DRY_BULB,
            Quantity.RETURN_WET_BULB,
            Quantity.SUPPLY_DRY_BULB,
            Quantity.DISCHARGE_LINE_TEMPERATURE,
            Quantity.LIQUID_PRESSURE,
            Quantity.LIQUID_LINE_TEMPERATURE,
            Quantity.SUCTION_PRESSURE,
            Quantity.SUCTION_LINE_TEMPERATURE);

    private final Case drawn;
    private final Level level;
    private final Site site;

    /** What he is about to say unasked. */
    private final Deque<Quantity> unasked = new ArrayDeque<>();

    /** What he called out last of each quantity; what is read back otherwise was misheard. */
    private final Map<Quantity, BigDecimal> calledOut = new EnumMap<>(Quantity.class);

    private final boolean spoken;
    private Optional<Quantity> answered = Optional.empty();
    private String lastMove = "";
    private int corrections;

    private int roundsTold;
    private boolean leaving;
    private String lastStep = "";
    private int sameStep;

    /** @param spoken whether his words may be misheard, so that he listens to what is read back */
    Technician(Case drawn, Level level, Site site, boolean spoken) {
        this.spoken = spoken;
        this.drawn = drawn;
        this.level = level;
        this.site = site;
    }

    /**
     * What he types now.
     *
     * @throws UnknownStepException for a step that he does not know
     */
    String answer(State state, Expectation expectation) {
        answered = Optional.empty();
        Optional<Pending> pending = state.conversation().pending();
        if (pending.isPresent()) {
            return spoken ? settles(pending.get()) : confirms(pending.get(), expectation);
        }
        Optional<String> corrected = spoken ? corrects(state) : Optional.empty();
        if (corrected.isPresent()) {
            return corrected.get();
        }
        if (!state.unheeded().isEmpty()) {
            return "understood";
        }
        if (tellsMore(state, expectation)) {
            unasked.addAll(notAskedFor());
            roundsTold++;
        }
        if (!unasked.isEmpty()) {
            return told(unasked.remove());
        }
        return leaving ? "finish" : step(state, expectation);
    }

    private String confirms(Pending pending, Expectation expectation) {
        return pending.candidates().isEmpty()
                ? "yes"
                : told(expectation.quantity().orElseThrow());
    }

    /** Says yes to what he said, and what he said once more to anything else. */
    private String settles(Pending pending) {
        if (pending.leadsTo().isPresent()) {
            // another job was understood
            return "no";
        }
        if (!(pending instanceof Pending.Doubt doubt)) {
            return pending.choice().isPresent() ? "total" : "yes";
        }
        Reading heard = doubt.reading();
        BigDecimal meant = calledOut.get(heard.quantity());
        if (meant == null) {
            // tube and length of the line are told in words of their own, amounts by what was moved
            boolean between = !doubt.candidates().isEmpty();
            if (site.canBeRead(heard.quantity()) || (between && lastMove.isEmpty())) {
                return "no";
            }
            return between ? lastMove : "yes";
        }
        return doubt.candidates().isEmpty() && same(heard, meant) ? "yes" : name(heard.quantity()) + " " + plain(meant);
    }

    /** Corrects the first thing that was read back otherwise than he said it. */
    private Optional<String> corrects(State state) {
        if (corrections >= MOST_CORRECTIONS) {
            return Optional.empty();
        }
        Optional<String> again = Stream.concat(
                        state
                                .assessment()
                                .refrigerant()
                                .filter(heard -> !heard.designation()
                                        .equals(drawn.unit()
                                                .plate()
                                                .refrigerant()
                                                .designation()))
                                .map(heard -> CHANGE
                                        + drawn.unit()
                                                .plate()
                                                .refrigerant()
                                                .designation()
                                                .toLowerCase(Locale.ROOT))
                                .stream(),
                        misheard(state).stream().map(this::correction))
                .findFirst();
        corrections += again.isPresent() ? 1 : 0;
        return again;
    }

    private String correction(Quantity quantity) {
        BigDecimal said = calledOut.get(quantity);
        return said == null ? "scratch " + name(quantity) : "correction " + name(quantity) + " " + plain(said);
    }

    /** The quantities that stand otherwise than he called them out, or though he never did. */
    List<Quantity> misheard(State state) {
        return state.assessment().readings().asMap().values().stream()
                .filter(this::otherwise)
                .map(Reading::quantity)
                .toList();
    }

    /** Whether it is not what he said; what he tells in words of his own or moves himself he does not compare. */
    private boolean otherwise(Reading stands) {
        BigDecimal said = calledOut.get(stands.quantity());
        return said == null ? site.canBeRead(stands.quantity()) : !same(stands, said);
    }

    private static boolean same(Reading heard, BigDecimal meant) {
        return heard.value().compareTo(meant) == 0;
    }

    /** The quantity that his last words were a value of, if they answered what was asked. */
    Optional<Quantity> answered() {
        return answered;
    }

    /** Before the first reading of each round. */
    private boolean tellsMore(State state, Expectation expectation) {
        return level == Level.FULL
                && roundsTold <= state.rounds().size()
                && expectation.quantity().filter(READ::contains).isPresent();
    }

    private Set<Quantity> notAskedFor() {
        Set<Quantity> others = EnumSet.copyOf(READ);
        others.removeAll(EnumSet.of(Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE));
        others.removeAll(
                drawn.unit().plate().meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT
                        ? EnumSet.of(Quantity.RETURN_WET_BULB)
                        : EnumSet.of(Quantity.LIQUID_PRESSURE, Quantity.LIQUID_LINE_TEMPERATURE));
        return others;
    }

    private String step(State state, Expectation expectation) {
        String step = expectation.step();
        sameStep = step.equals(lastStep) ? sameStep + 1 : 1;
        lastStep = step;
        return switch (step) {
            case "refrigerant", "refrigerant-of-system" ->
                drawn.unit().plate().refrigerant().designation().toLowerCase(Locale.ROOT);
            case "metering-device" -> said(drawn.unit().plate().meteringDevice());
            case "hoses-on", "charging-safety", "blend-safety", "recovery-safety" -> "understood";
            case "air-path" -> airPath();
            case "steady-running" -> "yes";
            case "outdoor-temperature",
                    "altitude",
                    "air-return-dry-bulb",
                    "air-return-wet-bulb",
                    "air-supply",
                    "plate-charge",
                    "plate-subcooling",
                    "chart-target",
                    "second-chart-outdoor",
                    "second-chart-target",
                    "return-wet-bulb",
                    "suction-pressure",
                    "suction-line",
                    "liquid-pressure",
                    "liquid-line",
                    "valve-suction-pressure",
                    "valve-suction-line",
                    "clue-liquid-pressure",
                    "clue-liquid-line",
                    "clue-discharge-line",
                    "clue-return-dry-bulb",
                    "clue-return-wet-bulb",
                    "clue-supply",
                    "functional-suction-pressure",
                    "functional-suction-line",
                    "functional-liquid-pressure",
                    "functional-liquid-line",
                    "functional-return",
                    "functional-supply" -> value(expectation);
            case "amount-added", "amount-recovered" -> moves(state);
            case "caps-and-leaks" -> sentToTheScale(state) ? "start weigh in" : "finish";
            case "weigh-safety" -> "understood";
            case "liquid-tube-size", "included-tube-size" -> "three eighths";
            case "line-length", "included-line-length" -> "fifteen feet";
            case "filter-drier-added", "functional-check" -> "no";
            case "line-charge",
                    "suction-tube-size",
                    "included-suction-size",
                    "drier-charge",
                    "liquid-lift",
                    "room-area",
                    "scale-before",
                    "scale-after",
                    "own-verdict" -> "skip";
            case "nameplate-charge" -> value(expectation);
            case "amount-weighed" -> recharges();
            // the verdict cannot be given, or everything is done
            case "orifice-verdict",
                    "valve-verdict",
                    "air-verdict",
                    "weigh-verdict",
                    "weighed-verdict",
                    "recovered-to",
                    "leak-test",
                    "functional-outcome",
                    "sign-off" -> "finish";
            default -> looks(step);
        };
    }

    private String value(Expectation expectation) {
        if (sameStep > (spoken ? LONG_PATIENCE : PATIENCE)) {
            // what cannot be skipped ends the call
            return sameStep > LONG_PATIENCE + 1 ? "finish" : "skip";
        }
        Optional<BigDecimal> read = expectation.quantity().flatMap(this::reads);
        answered = read.flatMap(value -> expectation.quantity());
        return read.map(Technician::plain).orElse("skip");
    }

    /** What is read now; spoken once more it is what was read before. */
    private Optional<BigDecimal> reads(Quantity quantity) {
        if (spoken && sameStep == 2 && calledOut.containsKey(quantity)) {
            return Optional.ofNullable(calledOut.get(quantity));
        }
        Optional<BigDecimal> read = site.reads(quantity).map(Reading::value).map(value -> roughly(quantity, value));
        read.ifPresent(value -> calledOut.put(quantity, value));
        return read;
    }

    /** Aloud nobody calls out tenths of a psi, and whoever is not understood twice leaves tenths out altogether. */
    private BigDecimal roughly(Quantity quantity, BigDecimal value) {
        return spoken && (quantity.dimension() == Dimension.GAUGE_PRESSURE || sameStep > 2)
                ? value.setScale(0, RoundingMode.HALF_EVEN)
                : value;
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }

    private String told(Quantity quantity) {
        return name(quantity) + reads(quantity).map(value -> " " + plain(value)).orElse("");
    }

    /** Whoever looks does not go on with a dirty filter or coil; he tells what he can read and leaves. */
    private String airPath() {
        boolean dirty =
                site.finds(Finding.FILTER_OR_INDOOR_COIL_DIRTY) || site.finds(Finding.CONDENSER_DIRTY_OR_AIR_BLOCKED);
        if (level == Level.CHECKLIST || !dirty) {
            return "yes";
        }
        leaving = true;
        roundsTold = Integer.MAX_VALUE;
        unasked.addAll(READ);
        return "no";
    }

    /** Moves what is advised, to the half ounce to which it is spoken: never more than was worked out. */
    private String moves(State state) {
        Optional<Correction> advised = state.assessment().correction();
        if (spoken && sameStep > 1 && !lastMove.isEmpty()) {
            return lastMove;
        }
        if (advised.isEmpty() || site.moves() == MOST_MOVES) {
            return "skip";
        }
        double next = advised.get().next().ounces();
        if (next == 0) {
            return "skip";
        }
        double ounces = Math.max(LEAST_STEP, Math.floor(Math.abs(next) / LEAST_STEP + 1e-9) * LEAST_STEP);
        site.moves(Mass.ounces(Math.copySign(ounces, next)));
        lastMove = plain(BigDecimal.valueOf(ounces)) + " ounces";
        return lastMove;
    }

    /**
     * Told that too little charge is behind the ice or the cold coil, he finds the leak and charges by weight, once.
     */
    private boolean sentToTheScale(State state) {
        Assessment assessment = state.assessment();
        return !site.recharged()
                && assessment.verdict().equals(Optional.of(Verdict.Kind.NO_VALID_TEST))
                && assessment.reservation().isPresent();
    }

    private String recharges() {
        double ounces = Math.rint(drawn.unit().plate().charge().ounces() / LEAST_STEP) * LEAST_STEP;
        site.recharges(Mass.ounces(ounces));
        return plain(BigDecimal.valueOf(ounces)) + " ounces";
    }

    private String looks(String step) {
        if (!step.startsWith(LOOK)) {
            throw new UnknownStepException(step, drawn.number());
        }
        Finding finding = ConstantName.find(Finding.class, step.substring(LOOK.length()))
                .orElseThrow(() -> new UnknownStepException(step, drawn.number()));
        return site.finds(finding) ? "yes" : "no";
    }

    private static String said(MeteringDevice device) {
        return switch (device) {
            case PISTON -> "piston";
            case CAPILLARY_TUBE -> "capillary tube";
            case THERMOSTATIC_EXPANSION_VALVE -> "txv";
            case ELECTRONIC_EXPANSION_VALVE -> "electronic expansion valve";
        };
    }

    /** What he calls it. */
    static String name(Quantity quantity) {
        return switch (quantity) {
            case SUPPLY_DRY_BULB -> "supply";
            case DISCHARGE_LINE_TEMPERATURE -> "discharge line";
            case LIQUID_LINE_TEMPERATURE -> "liquid line";
            case SUCTION_LINE_TEMPERATURE -> "suction line";
            default -> ConstantName.of(quantity).replace('-', ' ');
        };
    }
}
