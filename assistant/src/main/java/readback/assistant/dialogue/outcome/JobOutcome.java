package readback.assistant.dialogue.outcome;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.condition.AirflowPerTon;
import readback.calc.condition.Condition;
import readback.calc.condition.FailedCondition;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.Fault;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Contradiction;
import readback.calc.procedure.FunctionalCheck;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.calc.targets.Target;
import readback.prompts.checklist.Judged;

/**
 * What a job came to, with the numbers that led to it: made once, in the dialogue, and read by record, screen, report
 * and replay. Numbers are rounded when it is made, so that a record holds all that two outcomes are compared by.
 */
public sealed interface JobOutcome
        permits JobOutcome.Charge,
                JobOutcome.Airflow,
                JobOutcome.StatedAirflow,
                JobOutcome.PressureTest,
                JobOutcome.Evacuation,
                JobOutcome.ToWeighIn,
                JobOutcome.WeighedIn,
                JobOutcome.Functional,
                JobOutcome.AtRest,
                JobOutcome.FrozenCoil,
                ApplicableTest,
                HeaterAirflow,
                Capacity,
                Heating {

    /** What was judged. */
    Judged judged();

    /** What it came to in a word or two, without its numbers: "add", "airflow sufficient". */
    String name();

    /** In one line for a reader, the same for equal outcomes. */
    String line();

    /** The numbers that led to it, in these units; none where it rests on none. */
    List<Figure> figures(UnitSetting units);

    /** Whether the instruments cannot decide it. */
    default boolean borderline() {
        return false;
    }

    /** Whether it shows that the circuit leaks. */
    default boolean showsLeak() {
        return false;
    }

    /** Whether another outcome rests on the same numbers, whatever else was measured between them. */
    default boolean alike(JobOutcome other) {
        return equals(other);
    }

    /**
     * The verdict on the charge.
     *
     * @param early what was missing of the settling time when the readings were begun; zero for none
     * @param suspect who leads where the charge is not to be touched
     */
    record Charge(
            Verdict.Kind verdict,
            boolean borderline,
            ChargeMethod method,
            Optional<Temperature> evaporating,
            Optional<Temperature> condensing,
            Optional<TemperatureDifference> superheat,
            Optional<TemperatureDifference> subcooling,
            Optional<TemperatureDifference> target,
            Optional<Comparison.Position> valve,
            List<Contradiction.Kind> contradictions,
            Duration early,
            List<Condition> failed,
            Optional<Suspected> suspect)
            implements JobOutcome {

        /** The leading cause and how sure the ranking is. */
        public record Suspected(Fault fault, Diagnosis.Certainty certainty) {}

        public Charge {
            contradictions = List.copyOf(contradictions);
            failed = List.copyOf(failed);
        }

        public static Charge of(Judgement judgement, Duration early, Optional<Diagnosis> diagnosis) {
            return new Charge(
                    judgement.verdict().kind(),
                    judgement.verdict().borderline(),
                    judgement.method(),
                    judgement.evaporatingSaturation().map(Charge::millikelvins),
                    judgement.condensingSaturation().map(Charge::millikelvins),
                    judgement.superheat().map(estimate -> millikelvins(estimate.value())),
                    judgement.subcooling().map(estimate -> millikelvins(estimate.value())),
                    judgement.target().map(Target::value).map(Charge::millikelvins),
                    judgement.valveCheck().map(check -> check.superheat().position()),
                    judgement.contradictions().stream().map(Contradiction::kind).toList(),
                    early,
                    judgement.conditions().stream()
                            .map(FailedCondition::condition)
                            .toList(),
                    diagnosis
                            .filter(any -> judgement.verdict().kind() == Verdict.Kind.DO_NOT_CHARGE)
                            .map(each -> new Suspected(each.leader().fault(), each.certainty())));
        }

        @Override
        public Judged judged() {
            return Judged.CHARGE;
        }

        @Override
        public String name() {
            return ConstantName.of(verdict);
        }

        /** The side of the system that the method does not use does not count. */
        @Override
        public boolean alike(JobOutcome other) {
            return other instanceof Charge charge && carrying().equals(charge.carrying());
        }

        private Charge carrying() {
            boolean low = method == ChargeMethod.TOTAL_SUPERHEAT;
            return new Charge(
                    verdict,
                    borderline,
                    method,
                    evaporating.filter(any -> low),
                    condensing.filter(any -> !low),
                    superheat.filter(any -> low),
                    subcooling.filter(any -> !low),
                    target,
                    valve,
                    contradictions,
                    early,
                    failed,
                    suspect);
        }

        @Override
        public String line() {
            StringJoiner line = new StringJoiner(" ");
            line.add(name());
            if (borderline) {
                line.add("borderline");
            }
            line.add("method=" + ConstantName.of(method));
            evaporating.ifPresent(t -> line.add("evaporating=" + Math.round(t.kelvin() * 1000) + "mK"));
            condensing.ifPresent(t -> line.add("condensing=" + Math.round(t.kelvin() * 1000) + "mK"));
            superheat.ifPresent(d -> line.add("superheat=" + shown(d)));
            subcooling.ifPresent(d -> line.add("subcooling=" + shown(d)));
            target.ifPresent(d -> line.add("target=" + shown(d)));
            valve.ifPresent(position -> line.add("valve=" + ConstantName.of(position)));
            contradictions.forEach(each -> line.add("contradiction=" + ConstantName.of(each)));
            if (!early.isZero()) {
                line.add("measured-early=" + early);
            }
            failed.forEach(each -> line.add("failed=" + ConstantName.of(each)));
            suspect.ifPresent(each ->
                    line.add("suspect=" + ConstantName.of(each.fault())).add(ConstantName.of(each.certainty())));
            return line.toString();
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            List<Figure> figures = new ArrayList<>();
            evaporating.ifPresent(t -> figures.add(Figure.temperature("evaporating", t, units)));
            condensing.ifPresent(t -> figures.add(Figure.temperature("condensing", t, units)));
            superheat.ifPresent(d -> figures.add(Figure.difference("superheat", d, units)));
            subcooling.ifPresent(d -> figures.add(Figure.difference("subcooling", d, units)));
            target.ifPresent(d -> figures.add(Figure.difference("target", d, units)));
            return figures;
        }

        private static String shown(TemperatureDifference difference) {
            return Math.round(difference.kelvins() * 1000) + "mK";
        }

        private static Temperature millikelvins(Temperature temperature) {
            return Temperature.kelvin(Math.round(temperature.kelvin() * 1000) / 1000.0);
        }

        private static TemperatureDifference millikelvins(TemperatureDifference difference) {
            return TemperatureDifference.kelvins(Math.round(difference.kelvins() * 1000) / 1000.0);
        }
    }

    /**
     * The split of the indoor air.
     *
     * @param split tenths of a degree Fahrenheit; empty where the table of targets does not reach
     */
    record Airflow(Optional<Split> split) implements JobOutcome {

        /** Outcome, measured and target split, the latter in tenths of a degree Fahrenheit. */
        public record Split(SplitCheck.Outcome outcome, long actualTenths, long targetTenths) {}

        public static Airflow of(SplitCheck.Result result) {
            return new Airflow(
                    Optional.of(new Split(result.outcome(), tenths(result.actual()), tenths(result.target()))));
        }

        private static long tenths(TemperatureDifference difference) {
            return Math.round(difference.fahrenheit() * 10);
        }

        @Override
        public Judged judged() {
            return Judged.AIRFLOW;
        }

        @Override
        public String name() {
            return "airflow "
                    + split.map(each -> ConstantName.of(each.outcome())).orElse("outside-table");
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return split.map(each -> List.of(
                            Figure.difference("split", tenths(each.actualTenths()), units),
                            Figure.difference("split-target", tenths(each.targetTenths()), units)))
                    .orElse(List.of());
        }

        private static TemperatureDifference tenths(long fahrenheit) {
            return TemperatureDifference.fahrenheit(fahrenheit / 10.0);
        }

        @Override
        public String line() {
            return split.map(each -> name() + " split=" + each.actualTenths() / 10.0 + "F target="
                            + each.targetTenths() / 10.0 + "F")
                    .orElseGet(this::name);
        }
    }

    /** An airflow that was measured another way, in whole cubic feet a minute for each ton. */
    record StatedAirflow(boolean enough, long cubicFeetPerMinutePerTon) implements JobOutcome {

        public static StatedAirflow of(double cubicFeetPerMinutePerTon) {
            return new StatedAirflow(
                    AirflowPerTon.enough(cubicFeetPerMinutePerTon), Math.round(cubicFeetPerMinutePerTon));
        }

        @Override
        public Judged judged() {
            return Judged.AIRFLOW;
        }

        @Override
        public String name() {
            return "airflow " + (enough ? "enough" : "too-little-air");
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return List.of(Figure.airflowPerTon("airflow-per-ton", cubicFeetPerMinutePerTon));
        }

        @Override
        public String line() {
            return name() + " cfm-per-ton=" + cubicFeetPerMinutePerTon;
        }
    }

    /** The standing pressure test, with the loss in whole pascals. */
    record PressureTest(StandingPressure.Outcome outcome, long lossPascals) implements JobOutcome {

        public static PressureTest of(StandingPressure.Result result) {
            return new PressureTest(result.outcome(), Math.round(result.loss().pascals()));
        }

        @Override
        public Judged judged() {
            return Judged.PRESSURE_TEST;
        }

        @Override
        public String name() {
            return "pressure-test " + ConstantName.of(outcome);
        }

        @Override
        public boolean showsLeak() {
            return outcome == StandingPressure.Outcome.LEAKING;
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return List.of(Figure.pressureDifference("loss", (double) lossPascals, units));
        }

        @Override
        public String line() {
            return name() + " loss=" + lossPascals + "Pa";
        }
    }

    /** The decay of a vacuum: its slope in whole microns a minute, and the limit that it must stay below in microns. */
    record Evacuation(VacuumDecay.Outcome outcome, long slopeMicronsPerMinute, long limitMicrons)
            implements JobOutcome {

        @Override
        public Judged judged() {
            return Judged.EVACUATION;
        }

        @Override
        public String name() {
            return "evacuation " + ConstantName.of(outcome);
        }

        @Override
        public boolean showsLeak() {
            return outcome == VacuumDecay.Outcome.LEAK;
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return List.of(
                    Figure.micronsPerMinute("slope", slopeMicronsPerMinute), Figure.microns("limit", limitMicrons));
        }

        @Override
        public String line() {
            return name() + " slope=" + slopeMicronsPerMinute + "micron/min limit=" + limitMicrons + "micron";
        }
    }

    /** How much is to be weighed in. */
    record ToWeighIn(Amount amount) implements JobOutcome {

        /** The charge for the line set, or why there is none. */
        public sealed interface Amount {
            /** In a word, for a reader. */
            String line();

            /** So many grams. */
            record Grams(long grams) implements Amount {
                @Override
                public String line() {
                    return grams + "g";
                }
            }

            /** The size of the liquid tube is in no table. */
            record UnknownTube() implements Amount {
                @Override
                public String line() {
                    return "unknown-tube";
                }
            }

            /** More than the rooms allow: it must not go in. */
            record TooMuchForRooms(long grams) implements Amount {
                @Override
                public String line() {
                    return "too-much-for-rooms";
                }
            }

            /** The line set is so short that nothing would be left to weigh in. */
            record NothingLeft() implements Amount {
                @Override
                public String line() {
                    return "impossible";
                }
            }
        }

        @Override
        public Judged judged() {
            return Judged.WEIGH_IN;
        }

        @Override
        public String name() {
            return "weigh-in " + amount.line();
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return amount instanceof Amount.Grams some
                    ? List.of(Figure.mass("to-weigh-in", some.grams(), units))
                    : List.of();
        }

        @Override
        public String line() {
            return name();
        }
    }

    /**
     * What was weighed in.
     *
     * @param comparison with the charge that was to go in; empty where there was no figure for it
     */
    record WeighedIn(Optional<Weighed> comparison) implements JobOutcome {

        /** How the amount compares, in grams. */
        public record Weighed(WeighIn.Outcome outcome, long grams, long targetGrams) {}

        public static WeighedIn of(WeighIn.Outcome outcome, Mass in, Mass target) {
            return new WeighedIn(Optional.of(new Weighed(outcome, grams(in), grams(target))));
        }

        @Override
        public Judged judged() {
            return Judged.WEIGHED_IN;
        }

        @Override
        public String name() {
            return "weighed-in "
                    + comparison.map(each -> ConstantName.of(each.outcome())).orElse("nothing");
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return comparison
                    .map(each -> List.of(
                            Figure.mass("weighed-in", each.grams(), units),
                            Figure.mass("to-weigh-in", each.targetGrams(), units)))
                    .orElse(List.of());
        }

        @Override
        public String line() {
            return comparison
                    .map(each -> name() + " " + each.grams() + "g target=" + each.targetGrams() + "g")
                    .orElseGet(this::name);
        }
    }

    /**
     * What a system that was charged by weight shows when it runs: information, no verdict.
     *
     * @param superheat tenths of a degree Fahrenheit, as the others
     * @param unusual what few systems show
     */
    record Functional(
            Optional<Long> superheat,
            Optional<Long> subcooling,
            Optional<Long> split,
            List<FunctionalCheck.Aspect> unusual)
            implements JobOutcome {

        public Functional {
            unusual = List.copyOf(unusual);
        }

        public static Functional of(FunctionalCheck check) {
            return new Functional(
                    check.superheat().map(Functional::tenths),
                    check.subcooling().map(Functional::tenths),
                    check.split().map(Functional::tenths),
                    List.copyOf(check.unusual()));
        }

        private static long tenths(TemperatureDifference difference) {
            return Math.round(difference.fahrenheit() * 10);
        }

        @Override
        public Judged judged() {
            return Judged.FUNCTIONAL_CHECK;
        }

        @Override
        public String name() {
            boolean nothing = superheat.isEmpty() && subcooling.isEmpty() && split.isEmpty();
            return "functional-check " + (nothing ? "not-made" : unusual.isEmpty() ? "usual" : "unusual");
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            List<Figure> figures = new ArrayList<>();
            superheat.ifPresent(each -> figures.add(figure("superheat", each, units)));
            subcooling.ifPresent(each -> figures.add(figure("subcooling", each, units)));
            split.ifPresent(each -> figures.add(figure("split", each, units)));
            return figures;
        }

        private static Figure figure(String name, long tenths, UnitSetting units) {
            return Figure.difference(name, TemperatureDifference.fahrenheit(tenths / 10.0), units);
        }

        @Override
        public String line() {
            StringJoiner line = new StringJoiner(" ");
            line.add(name());
            superheat.ifPresent(each -> line.add("superheat=" + each / 10.0 + "F"));
            subcooling.ifPresent(each -> line.add("subcooling=" + each / 10.0 + "F"));
            split.ifPresent(each -> line.add("split=" + each / 10.0 + "F"));
            unusual.forEach(each -> line.add("unusual=" + ConstantName.of(each)));
            return line.toString();
        }
    }

    /** The pressure at rest. */
    record AtRest(Optional<Against> comparison) implements JobOutcome {

        /** How it compares with saturation; the excess in whole pascals. */
        public record Against(RestingPressure.Outcome outcome, long excessPascals) {}

        public static AtRest of(RestingPressure.Result result) {
            return new AtRest(Optional.of(
                    new Against(result.outcome(), Math.round(result.excess().pascals()))));
        }

        @Override
        public Judged judged() {
            return Judged.RESTING_PRESSURE;
        }

        @Override
        public String name() {
            return "resting-pressure "
                    + comparison.map(each -> ConstantName.of(each.outcome())).orElse("no-saturation");
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return comparison
                    .map(each -> List.of(Figure.pressureDifference("excess", (double) each.excessPascals(), units)))
                    .orElse(List.of());
        }

        @Override
        public String line() {
            return comparison
                    .map(each -> name() + " excess=" + each.excessPascals() + "Pa")
                    .orElseGet(this::name);
        }
    }

    /**
     * A coil that was iced and is free of ice.
     *
     * @param early what was missing of the time to thaw when it was cut short; zero for none
     */
    record FrozenCoil(Duration early) implements JobOutcome {

        @Override
        public Judged judged() {
            return Judged.FROZEN_COIL;
        }

        @Override
        public String name() {
            return "frozen-coil thawed";
        }

        @Override
        public List<Figure> figures(UnitSetting units) {
            return early.isZero() ? List.of() : List.of(Figure.minutes("early", early));
        }

        @Override
        public String line() {
            return early.isZero() ? name() : name() + " early=" + early;
        }
    }

    /** All of them in one line for a reader; empty for none. */
    static String line(List<JobOutcome> outcomes) {
        return outcomes.stream().map(JobOutcome::line).collect(Collectors.joining("; "));
    }

    /** Grams, whole. */
    static long grams(Mass mass) {
        return Math.round(mass.kilograms() * 1000);
    }
}
