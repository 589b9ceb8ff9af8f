package readback.assistant.dialogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import readback.assistant.dialogue.outcome.AirflowBySplit;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.CorrectionMessages;
import readback.assistant.dialogue.outcome.DiagnosisMessages;
import readback.assistant.dialogue.outcome.Evacuation;
import readback.assistant.dialogue.outcome.FrozenCoil;
import readback.assistant.dialogue.outcome.Heating;
import readback.assistant.dialogue.outcome.JudgementMessages;
import readback.assistant.dialogue.outcome.PressureAtRest;
import readback.assistant.dialogue.outcome.PressureHold;
import readback.assistant.dialogue.outcome.RoundedFacts;
import readback.assistant.dialogue.outcome.StatedAirflow;
import readback.assistant.dialogue.outcome.Telling;
import readback.calc.charge.Correction;
import readback.calc.condition.AirflowPerTon;
import readback.calc.condition.TemperatureSplit;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.Saturation;
import readback.calc.name.ConstantName;
import readback.calc.procedure.HeatingCheck;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumCriterion;
import readback.calc.procedure.VacuumDecay;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Judges what a checklist asks to judge; empty while something that it needs is missing. */
final class JobJudge {

    /** The option of the port that is suction while heating, too. */
    private static final String THIRD_PORT = "third-port";

    /** The others are shown. */
    private static final int SIGNS_SAID = 2;

    private final Assessment assessment;
    private final UnitSetting units;

    JobJudge(Assessment assessment) {
        this.assessment = assessment;
        this.units = assessment.settings().units();
    }

    Optional<Announcement> of(Judged what) {
        return switch (what) {
            case CHARGE -> charge();
            case AIRFLOW -> airflow();
            case PRESSURE_TEST -> standingPressure();
            case EVACUATION -> evacuation();
            case WEIGH_IN -> new WeighInJudge(assessment).target();
            case WEIGHED_IN -> new WeighInJudge(assessment).weighed();
            case FUNCTIONAL_CHECK -> new FunctionalJudge(assessment).figures();
            case RESTING_PRESSURE -> restingPressure();
            case FROZEN_COIL -> frozenCoil();
            case APPLICABLE_TEST -> Seasons.applicable(assessment);
            case HEATING -> heating();
            case HEATER_AIRFLOW -> new AirSideJudge(assessment).airflow();
            case CAPACITY -> new AirSideJudge(assessment).capacity();
        };
    }

    private Optional<Announcement> charge() {
        return assessment
                .outcome()
                .flatMap(outcome -> assessment.judgement().map(judgement -> {
                    Telling telling = new Telling();
                    List<Message> suspects = assessment
                            .diagnosis()
                            .map(each -> DiagnosisMessages.suspects(judgement, each, assessment.reservation()))
                            .orElse(List.of());
                    Optional<Correction> correction = assessment.correction();
                    boolean trimmed = correction
                            .filter(each -> each.basis() == Correction.Basis.TRIM)
                            .isPresent();
                    new JudgementMessages(units).verdict(judgement, suspects, trimmed, telling);
                    correction.ifPresent(each -> {
                        CorrectionMessages.tell(each, !judgement.verdict().borderline(), units, telling);
                        Seasons.ofCharge(assessment, each).forEach(telling::reason);
                        if (each.basis() == Correction.Basis.BY_WEIGHT) {
                            Cylinders.depth(assessment).ifPresent(telling::reason);
                        }
                    });
                    assessment
                            .early()
                            .ifPresent(missing -> telling.reason(
                                    Message.of("verdict.measured-early").with("minutes", Waiting.minutes(missing))));
                    if (assessment.altitudeMatters()) {
                        telling.reason(Message.of("verdict.sea-level-assumed"));
                    }
                    return telling.of(outcome);
                }));
    }

    private Optional<Announcement> airflow() {
        OptionalDouble perTon = AirflowPerTon.of(assessment.readings());
        if (perTon.isPresent()) {
            StatedAirflow stated = StatedAirflow.of(perTon.getAsDouble());
            return Optional.of(new Announcement(
                    stated,
                    List.of(Message.of(stated.enough() ? "airflow.enough" : "airflow.too-little-air")),
                    List.of(Message.of("airflow.per-ton")
                            .with(
                                    "value",
                                    new Fact.Amount(
                                            BigDecimal.valueOf(stated.cubicFeetPerMinutePerTon()),
                                            Unit.CUBIC_FOOT_PER_MINUTE)))));
        }
        Optional<Temperature> dry = assessment.readings().temperature(Quantity.RETURN_DRY_BULB);
        Optional<Temperature> wet = assessment.readings().temperature(Quantity.RETURN_WET_BULB);
        Optional<TemperatureDifference> actual = TemperatureSplit.actual(assessment.readings());
        if (dry.isEmpty() || wet.isEmpty() || actual.isEmpty()) {
            return Optional.empty();
        }
        Optional<SplitCheck.Result> split = SplitCheck.judge(
                dry.get(), wet.get(), actual.get(), assessment.settings().limits());
        if (split.isEmpty()) {
            return Optional.of(
                    new Announcement(new AirflowBySplit(Optional.empty()), Message.of("airflow.outside-table")));
        }
        String outcome = ConstantName.of(split.get().outcome());
        return Optional.of(new Announcement(
                AirflowBySplit.of(split.get()),
                List.of(Message.of("airflow." + outcome)),
                List.of(Message.of("airflow.split")
                        .with("value", Fact.difference(split.get().actual(), units))
                        .with("target", Fact.difference(split.get().target(), units)))));
    }

    private Optional<Announcement> standingPressure() {
        Optional<Reading> start = assessment.reading(Slots.PRESSURE_START);
        Optional<Reading> end = assessment.reading(Slots.PRESSURE_END);
        Optional<Reading> gasStart = assessment.reading(Slots.GAS_START);
        Optional<Reading> gasEnd = assessment.reading(Slots.GAS_END);
        if (start.isEmpty() || end.isEmpty() || gasStart.isEmpty() || gasEnd.isEmpty()) {
            return Optional.empty();
        }
        StandingPressure.Result result = StandingPressure.judge(
                start.get().gaugePressure(),
                gasStart.get().temperature(),
                end.get().gaugePressure(),
                gasEnd.get().temperature(),
                assessment.air());
        String outcome = ConstantName.of(result.outcome());
        return Optional.of(new Announcement(
                PressureHold.of(result),
                List.of(Message.of("pressure-test." + outcome)
                        .with("loss", RoundedFacts.pressureDifference(result.loss(), units))),
                List.of(Message.of("pressure-test.expected")
                        .with("expected", pressure(result.expected()))
                        .with("measured", Fact.amount(end.get())))));
    }

    private Optional<Announcement> evacuation() {
        Optional<Reading> isolated = assessment.reading(Slots.VACUUM_ISOLATED);
        if (isolated.isEmpty() || assessment.reading(Slots.VACUUM_HELD).isEmpty()) {
            return Optional.empty();
        }
        List<VacuumDecay.Sample> samples = new ArrayList<>();
        samples.add(new VacuumDecay.Sample(Duration.ZERO, isolated.get().absolutePressure()));
        for (Slot later : List.of(Slots.VACUUM_HALF, Slots.VACUUM_HELD)) {
            assessment
                    .reading(later)
                    .ifPresent(reading -> Holds.elapsed(assessment.sheet(), Slots.VACUUM_FIRST_HALF, later)
                            .ifPresent(elapsed ->
                                    samples.add(new VacuumDecay.Sample(elapsed, reading.absolutePressure()))));
        }
        VacuumCriterion criterion = Holds.criterion(assessment);
        VacuumDecay.Outcome outcome = VacuumDecay.judge(samples, criterion);
        double slope =
                Unit.MICRON.fromBase(VacuumDecay.pascalsPerMinute(samples).orElse(0));
        return Optional.of(new Announcement(
                new Evacuation(
                        outcome,
                        Math.round(slope),
                        Math.round(
                                Unit.MICRON.fromBase(criterion.mustStayBelow().pascals()))),
                List.of(Message.of("evacuation." + ConstantName.of(outcome))),
                List.of(Message.of("evacuation.slope")
                        .with("slope", new Fact.Amount(rounded(slope, 0), Unit.MICRON))
                        .with("limit", microns(criterion.mustStayBelow())))));
    }

    static Fact microns(AbsolutePressure vacuum) {
        return new Fact.Amount(rounded(Unit.MICRON.fromBase(vacuum.pascals()), 0), Unit.MICRON);
    }

    private Optional<Announcement> restingPressure() {
        Optional<Reading> resting = assessment.readings().find(Quantity.RESTING_PRESSURE);
        Optional<Reading> temperature = assessment.reading(Slots.REST_TEMPERATURE);
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        if (resting.isEmpty() || temperature.isEmpty() || refrigerant.isEmpty()) {
            return Optional.empty();
        }
        try {
            RestingPressure.Result result = RestingPressure.judge(
                    refrigerant.get(),
                    resting.get().gaugePressure(),
                    temperature.get().temperature(),
                    assessment.air(),
                    assessment.instruments().liquidGauge().at(resting.get().gaugePressure()),
                    assessment.instruments().lineProbe());
            String outcome = ConstantName.of(result.outcome());
            return Optional.of(new Announcement(
                    PressureAtRest.of(result),
                    List.of(Message.of("resting-pressure." + outcome)),
                    List.of(Message.of("resting-pressure.compared").with("pressure", pressure(result.saturation())))));
        } catch (OutOfRangeException e) {
            return Optional.of(
                    new Announcement(new PressureAtRest(Optional.empty()), Message.of("resting-pressure.none")));
        }
    }

    private Optional<Announcement> frozenCoil() {
        if (assessment.option(Slots.COIL_FREE_OF_ICE).filter(Intake.YES::equals).isEmpty()) {
            return Optional.empty();
        }
        Duration early = assessment
                .sheet()
                .waited(Slots.THAWING)
                .map(Answer.Passed::missing)
                .orElse(Duration.ZERO);
        return Optional.of(new Announcement(new FrozenCoil(early), Message.of("frozen-coil.thawed")));
    }

    private Optional<Announcement> heating() {
        Optional<Temperature> outdoor = assessment.readings().temperature(Quantity.OUTDOOR_TEMPERATURE);
        Optional<Temperature> indoor = assessment.reading(Slots.HEATING_RETURN).map(Reading::temperature);
        if (outdoor.isEmpty() || indoor.isEmpty()) {
            return Optional.empty();
        }
        HeatingCheck.Result result = HeatingCheck.judge(new HeatingCheck.Readings(
                outdoor.get(),
                indoor.get(),
                assessment.reading(Slots.HEATING_SUPPLY).map(Reading::temperature),
                assessment.reading(Slots.HEATING_DISCHARGE).map(Reading::temperature),
                boiling(),
                assessment.reading(Slots.HEATING_SUCTION_LINE).map(Reading::temperature)));
        Telling telling = new Telling();
        telling.headline(Message.of("heating." + ConstantName.of(result.outcome())));
        result.obstacle().ifPresent(each -> telling.headline(Message.of("heating.obstacle." + ConstantName.of(each))));
        List<Message> signs = result.signs().stream()
                .map(sign -> Message.of("heating.sign." + ConstantName.of(sign)))
                .toList();
        signs.stream().limit(SIGNS_SAID).forEach(telling::headline);
        signs.stream().skip(SIGNS_SAID).forEach(telling::number);
        result.rise()
                .ifPresent(rise -> telling.number(Message.of("heating.rise")
                        .with("value", Fact.difference(rise, units))
                        .with("usual", Fact.difference(result.usualRise(), units))));
        result.dischargeOverOutdoor()
                .ifPresent(over ->
                        telling.number(Message.of("heating.discharge").with("value", Fact.difference(over, units))));
        result.superheat()
                .ifPresent(superheat -> telling.number(
                        Message.of("heating.superheat").with("value", Fact.difference(superheat, units))));
        telling.reason(Message.of("heating.soft"));
        return Optional.of(telling.of(Heating.of(result)));
    }

    /**
     * Empty too where the refrigerant has no saturation at that pressure, and for one that was told before it came out
     * that the gauge sits elsewhere.
     */
    private Optional<Temperature> boiling() {
        return assessment
                .reading(Slots.HEATING_SUCTION)
                .filter(any -> assessment
                        .option(Slots.SUCTION_PORT)
                        .filter(THIRD_PORT::equals)
                        .isPresent())
                .map(reading -> reading.gaugePressure().absoluteIn(assessment.air()))
                .flatMap(
                        pressure -> assessment.refrigerant().flatMap(fluid -> Saturation.at(pressure, fluid, Side.DEW)))
                .map(Saturation::temperature);
    }

    private Fact pressure(GaugePressure pressure) {
        Unit unit = units.pressure();
        return new Fact.Amount(rounded(unit.fromBase(pressure.pascals()), unit == Unit.PSIG ? 0 : 2), unit);
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
