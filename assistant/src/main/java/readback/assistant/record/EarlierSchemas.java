package readback.assistant.record;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.AirflowBySplit;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.Evacuation;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.dialogue.outcome.PressureAtRest;
import readback.assistant.dialogue.outcome.PressureHold;
import readback.assistant.dialogue.outcome.ToWeighIn;
import readback.assistant.dialogue.outcome.WeighedIn;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.Fault;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Contradiction;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Meaning;
import readback.grammar.Reason;
import readback.prompts.checklist.Slot;

/**
 * Reads what records of earlier schemas kept as lines of text: the first its meanings, the first two what filled the
 * slots and what was announced. Nothing is written in this form any more; what cannot be told from the line, as the
 * words that were not understood, stays empty.
 */
final class EarlierSchemas {

    static final int FIRST = 1;

    private static final String BETWEEN = "between [";
    private static final String IGNORED = "ignored: ";
    private static final String TIMER = "timer ";
    private static final String NOT_UNDERSTOOD = "not understood";
    private static final String NOTE = "note: ";
    private static final String CORRECTION = "correction: ";
    private static final String SATURATION = "saturation at ";
    private static final String CUT_SHORT = "cut short by ";

    /** What was measured in slots that a procedure named itself; all others were called as their quantity is. */
    private static final Map<String, Quantity> NAMED = Map.ofEntries(
            Map.entry("pressure-start", Quantity.NITROGEN_PRESSURE),
            Map.entry("pressure-end", Quantity.NITROGEN_PRESSURE),
            Map.entry("gas-start", Quantity.LINE_TEMPERATURE),
            Map.entry("gas-end", Quantity.LINE_TEMPERATURE),
            Map.entry("rest-temperature", Quantity.LINE_TEMPERATURE),
            Map.entry("vacuum-limit", Quantity.VACUUM_LEVEL),
            Map.entry("vacuum-isolated", Quantity.VACUUM_LEVEL),
            Map.entry("vacuum-half", Quantity.VACUUM_LEVEL),
            Map.entry("vacuum-held", Quantity.VACUUM_LEVEL),
            Map.entry("included-tube-size", Quantity.LIQUID_TUBE_SIZE),
            Map.entry("scale-before", Quantity.CYLINDER_WEIGHT),
            Map.entry("scale-after", Quantity.CYLINDER_WEIGHT));

    private EarlierSchemas() {}

    static Understood understood(String line) {
        for (Understood.Occurrence occurrence : Understood.Occurrence.values()) {
            if (occurrence.line().equals(line)) {
                return occurrence;
            }
        }
        if (line.startsWith(TIMER)) {
            return new Understood.Elapsed(line.substring(TIMER.length()));
        }
        if (line.startsWith(IGNORED)) {
            return new Understood.Ignored(ignorance(line.substring(IGNORED.length())));
        }
        if (line.startsWith(BETWEEN)) {
            return new Understood.Between(Arrays.stream(
                            line.substring(BETWEEN.length(), line.length() - 1).split(", ", -1))
                    .map(EarlierSchemas::meaning)
                    .toList());
        }
        return new Understood.Meant(meaning(line));
    }

    /** Why words were passed over, from the sentence that earlier schemas kept. */
    static Decision.Ignorance ignorance(String sentence) {
        return switch (sentence) {
            case "closed" -> Decision.Ignorance.CLOSED;
            case "Nothing was said." -> Decision.Ignorance.NOTHING_SAID;
            case "The words are not in the vocabulary." -> Decision.Ignorance.UNKNOWN_WORDS;
            case "Most of the words are not in the vocabulary." -> Decision.Ignorance.MOSTLY_UNKNOWN_WORDS;
            case "It seemed to go on with talk that was not meant for us." -> Decision.Ignorance.AMID_TALK;
            default -> Decision.Ignorance.NOT_FOR_US;
        };
    }

    private static Meaning meaning(String line) {
        if (line.startsWith(NOT_UNDERSTOOD)) {
            return new Meaning.NotUnderstood(
                    "",
                    Reason.of(
                            Reason.Kind.RECORDED_SENTENCE,
                            line.substring(NOT_UNDERSTOOD.length()).replaceFirst("^: ", "")));
        }
        if (line.startsWith(NOTE)) {
            return new Meaning.Note(line.substring(NOTE.length()));
        }
        if (line.startsWith(CORRECTION)) {
            return new Meaning.Correction(readings(line.substring(CORRECTION.length())));
        }
        if (line.startsWith(SATURATION)) {
            return new Meaning.SaturationQuestion(
                    readings(line.substring(SATURATION.length())).get(0));
        }
        Optional<Meaning.Ordered> order = order(line);
        if (order.isPresent()) {
            return order.get();
        }
        int colon = line.indexOf(": ");
        return colon > 0
                ? new Meaning.Choice(line.substring(0, colon), line.substring(colon + 2))
                : new Meaning.Values(readings(line));
    }

    private static Optional<Meaning.Ordered> order(String line) {
        String[] words = line.split(" ", 2);
        for (Command command : Command.values()) {
            if (ConstantName.of(command).equals(words[0])) {
                return words.length == 1
                        ? Optional.of(new Meaning.Ordered(command))
                        : quantity(words[1]).map(about -> new Meaning.Ordered(command, Optional.of(about)));
            }
        }
        return Optional.empty();
    }

    private static List<Reading> readings(String line) {
        List<Reading> readings = new ArrayList<>();
        for (String part : line.split(", ", -1)) {
            String[] words = part.split(" ", 3);
            Quantity quantity = words.length < 3 ? null : quantity(words[0]).orElse(null);
            if (quantity == null) {
                throw new IllegalArgumentException("no reading: \"" + part + "\"");
            }
            readings.add(new Reading(quantity, new BigDecimal(words[1]), unit(quantity, words[2])));
        }
        return readings;
    }

    private static Optional<Quantity> quantity(String name) {
        return ConstantName.find(Quantity.class, name);
    }

    private static Unit unit(Quantity quantity, String symbol) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.symbol().equals(symbol) && unit.dimension() == quantity.dimension())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit: \"" + symbol + "\""));
    }

    /** What filled a slot: "118 psig", "R-410A", "done", "skipped", "cut short by PT5M"; empty for nothing any more. */
    static Change change(String slot, String content) {
        return new Change(
                new Slot(slot),
                Optional.empty(),
                content.isEmpty() ? Optional.empty() : Optional.of(content(slot, content)));
    }

    private static Content content(String slot, String line) {
        if (line.equals(new Content.Skipped().line())) {
            return new Content.Skipped();
        }
        if (line.startsWith(CUT_SHORT)) {
            return new Content.Passed(Duration.parse(line.substring(CUT_SHORT.length())));
        }
        return new Slot(slot)
                .quantity()
                .or(() -> Optional.ofNullable(NAMED.get(slot)))
                .<Content>map(quantity -> new Content.Value(reading(quantity, line)))
                .orElseGet(() -> new Content.Option(line));
    }

    private static Reading reading(Quantity quantity, String line) {
        String[] words = line.split(" ", 2);
        if (words.length < 2) {
            throw new IllegalArgumentException("no value: \"" + line + "\"");
        }
        return new Reading(quantity, new BigDecimal(words[0]), unit(quantity, words[1]));
    }

    /** What was announced: outcomes separated by semicolons, the charge verdict first, each with its numbers. */
    static List<JobOutcome> outcomes(String line) {
        return Arrays.stream(line.split("; ", -1))
                .map(Told::new)
                .map(Told::outcome)
                .toList();
    }

    /** The words of one outcome: a name of one word or two, flags, and numbers as in "split=19.2F". */
    private static final class Told {

        private final String line;
        private final List<String> words;

        Told(String line) {
            this.line = line;
            this.words = List.of(line.split(" ", -1));
        }

        JobOutcome outcome() {
            // a verdict on the charge may be called as a job is: "weigh-in"
            if (find("method").isPresent()) {
                return charge();
            }
            return switch (words.get(0)) {
                case "airflow" ->
                    new AirflowBySplit(find("split")
                            .map(any -> new AirflowBySplit.Split(
                                    named(SplitCheck.Outcome.class), tenths("split"), tenths("target"))));
                case "pressure-test" -> new PressureHold(named(StandingPressure.Outcome.class), whole("loss", "Pa"));
                case "evacuation" ->
                    new Evacuation(
                            named(VacuumDecay.Outcome.class), whole("slope", "micron/min"), whole("limit", "micron"));
                case "weigh-in" -> new ToWeighIn(toWeighIn());
                case "weighed-in" ->
                    new WeighedIn(find("target")
                            .map(any -> new WeighedIn.Weighed(
                                    named(WeighIn.Outcome.class), grams(words.get(2)), whole("target", "g"))));
                case "resting-pressure" ->
                    new PressureAtRest(find("excess")
                            .map(any -> new PressureAtRest.Against(
                                    named(RestingPressure.Outcome.class), whole("excess", "Pa"))));
                default -> throw unknown();
            };
        }

        private JobOutcome charge() {
            return new ChargeVerdict(
                    constant(Verdict.Kind.class, words.get(0)),
                    words.contains("borderline"),
                    find("method")
                            .map(name -> constant(ChargeMethod.class, name))
                            .orElseThrow(this::unknown),
                    find("evaporating").map(this::kelvins).map(Temperature::kelvin),
                    find("condensing").map(this::kelvins).map(Temperature::kelvin),
                    find("superheat").map(this::kelvins).map(TemperatureDifference::kelvins),
                    find("subcooling").map(this::kelvins).map(TemperatureDifference::kelvins),
                    find("target").map(this::kelvins).map(TemperatureDifference::kelvins),
                    find("valve").map(name -> constant(Comparison.Position.class, name)),
                    all("contradiction")
                            .map(name -> constant(Contradiction.Kind.class, name))
                            .toList(),
                    find("measured-early").map(Duration::parse).orElse(Duration.ZERO),
                    all("failed").map(name -> constant(Condition.class, name)).toList(),
                    find("suspect")
                            .map(name -> new ChargeVerdict.Suspected(
                                    constant(Fault.class, name),
                                    constant(Diagnosis.Certainty.class, words.get(words.size() - 1)))));
        }

        private ToWeighIn.Amount toWeighIn() {
            return switch (words.get(1)) {
                case "unknown-tube" -> new ToWeighIn.Amount.UnknownTube();
                case "impossible" -> new ToWeighIn.Amount.NothingLeft();
                default -> new ToWeighIn.Amount.Grams(grams(words.get(1)));
            };
        }

        private Optional<String> find(String name) {
            return all(name).findFirst();
        }

        private Stream<String> all(String name) {
            return words.stream()
                    .filter(word -> word.startsWith(name + "="))
                    .map(word -> word.substring(name.length() + 1));
        }

        private double kelvins(String number) {
            return Long.parseLong(without(number, "mK")) / 1000.0;
        }

        private long tenths(String name) {
            return Math.round(10 * Double.parseDouble(without(find(name).orElseThrow(this::unknown), "F")));
        }

        private long whole(String name, String unit) {
            return Long.parseLong(without(find(name).orElseThrow(this::unknown), unit));
        }

        private long grams(String number) {
            return Long.parseLong(without(number, "g"));
        }

        private String without(String number, String unit) {
            if (!number.endsWith(unit)) {
                throw unknown();
            }
            return number.substring(0, number.length() - unit.length());
        }

        private <E extends Enum<E>> E named(Class<E> type) {
            return constant(type, words.size() > 1 ? words.get(1) : "");
        }

        private <E extends Enum<E>> E constant(Class<E> type, String name) {
            return ConstantName.find(type, name).orElseThrow(this::unknown);
        }

        private IllegalArgumentException unknown() {
            return new IllegalArgumentException("no outcome: \"" + line + "\"");
        }
    }
}
