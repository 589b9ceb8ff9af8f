package readback.assistant.report;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.outcome.Evacuation;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.FunctionalFigures;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.dialogue.outcome.PressureHold;
import readback.assistant.dialogue.outcome.WeighedIn;
import readback.calc.caution.CautionFinder;
import readback.calc.charge.Judgement;
import readback.calc.charge.ValveCheck;
import readback.calc.commissioning.CoilDifference;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Efficiency;
import readback.calc.measurement.Limits;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.name.ConstantName;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;

/** The refrigerant circuit in the record of a new installation: procedures, charge, and what is told as information. */
final class CircuitFields {

    private final CommissioningFields fields;

    CircuitFields(CommissioningFields fields) {
        this.fields = fields;
    }

    List<CommissioningFields.Field> circuit() {
        return List.of(pressureTest(), evacuation(), weighed(), target(), superheat(), subcooling());
    }

    List<CommissioningFields.Field> information() {
        return List.of(condensingOverOutdoor(), evaporatingUnderReturn(), superheatAtCompressor(), dischargeLine());
    }

    /** The last result of a kind, of the last time that it was judged. */
    private Optional<JobReport.Result> latest(Class<? extends JobOutcome> kind) {
        return fields.report().results().stream()
                .filter(result -> kind.isInstance(result.outcome()))
                .reduce((earlier, later) -> later);
    }

    private static Optional<Figure> reported(Optional<JobReport.Result> result, String name) {
        return result.stream()
                .flatMap(each -> each.figures().stream())
                .filter(figure -> figure.name().equals(name))
                .findFirst();
    }

    private String named(JobReport.Result result, boolean met, boolean judged) {
        return judged
                ? fields.met(met)
                : fields.own("not-judged") + ": "
                        + fields.texts().outcome(result.outcome().name());
    }

    private CommissioningFields.Field pressureTest() {
        Optional<JobReport.Result> result = latest(PressureHold.class);
        return fields.field(
                "pressure-test",
                reported(result, "loss"),
                fields.criterion("pressure-test"),
                result.map(each -> {
                            StandingPressure.Outcome outcome = ((PressureHold) each.outcome()).outcome();
                            return named(
                                    each,
                                    outcome == StandingPressure.Outcome.TIGHT,
                                    outcome != StandingPressure.Outcome.NOT_SETTLED);
                        })
                        .orElse(""));
    }

    private CommissioningFields.Field evacuation() {
        Optional<JobReport.Result> result = latest(Evacuation.class);
        return fields.field(
                "evacuation",
                reported(result, "vacuum-held"),
                fields.criterion(
                        "evacuation",
                        reported(result, "limit").map(Figure::shown).orElseGet(() -> fields.own("a-limit"))),
                result.map(each -> {
                            VacuumDecay.Outcome outcome = ((Evacuation) each.outcome()).outcome();
                            return named(
                                    each, outcome == VacuumDecay.Outcome.TIGHT, outcome != VacuumDecay.Outcome.WAIT);
                        })
                        .orElse(""));
    }

    private CommissioningFields.Field weighed() {
        ChargeGrading weight = ChargeGrading.byWeight(fields.report());
        Optional<JobReport.Result> result = latest(WeighedIn.class);
        Optional<Figure> target = reported(result, "to-weigh-in");
        return fields.field(
                "weighed-in",
                reported(result, "weighed-in"),
                target.map(each -> fields.criterion(
                                "weighed-in",
                                fields.figures().shown(WeighIn.tolerance(Mass.kilograms(each.si()))),
                                each.shown()))
                        .orElseGet(() -> fields.texts().label("commissioning.criterion.weighed-in-open")),
                graded(weight));
    }

    private String graded(ChargeGrading grading) {
        return grading.grade()
                .map(grade -> fields.texts().label("commissioning.grade." + grade.name()))
                .orElseGet(() -> fields.own("not-graded") + ": "
                        + fields.texts().label("commissioning.reason." + ConstantName.of(grading.reason())));
    }

    private Optional<Figure> ofCharge(String name) {
        return fields.report().finalRound().stream()
                .flatMap(round ->
                        round.outcome().figures(fields.report().settings().units()).stream())
                .filter(figure -> figure.name().equals(name))
                .findFirst();
    }

    private CommissioningFields.Field target() {
        String source = fields.judgement()
                .flatMap(Judgement::target)
                .map(target -> fields.texts().label("source." + target.source().name()))
                .orElseGet(() -> fields.texts().label("commissioning.source.target"));
        return fields.field("target", ofCharge("target"), fields.criterion("target"), HtmlTable.NOTHING)
                .because(source);
    }

    private boolean judgedBy(ChargeMethod method) {
        return fields.judgement().filter(each -> each.method() == method).isPresent();
    }

    /** What was measured of a charge; of one that was weighed in, by its functional check. */
    private Optional<Figure> measured(String name) {
        return ofCharge(name).or(() -> reported(latest(FunctionalFigures.class), name));
    }

    private CommissioningFields.Field superheat() {
        if (!judgedBy(ChargeMethod.SUBCOOLING)) {
            return fields.field(
                    "superheat",
                    measured("superheat"),
                    fields.criterion("superheat", fields.around(Limits.INSTALLER.superheat())),
                    byReadings());
        }
        Optional<ValveCheck> valve = fields.judgement().flatMap(Judgement::valveCheck);
        Band range = valve.map(check -> check.superheat().limits())
                .orElseGet(() -> fields.report().settings().limits().valveSuperheat());
        return fields.field(
                        "superheat",
                        measured("superheat"),
                        fields.texts()
                                .label(
                                        "commissioning.criterion.superheat-valve",
                                        fields.figures().limit(range.low()),
                                        fields.figures().limit(range.high())),
                        valve.map(check -> fields.held(check.superheat())).orElseGet(() -> fields.own("not-judged")))
                .because(fields.texts().label("commissioning.source.superheat-valve"));
    }

    private CommissioningFields.Field subcooling() {
        if (judgedBy(ChargeMethod.TOTAL_SUPERHEAT)) {
            return fields.field(
                            "subcooling",
                            measured("subcooling"),
                            fields.texts().label("commissioning.criterion.subcooling-orifice"),
                            fields.own("for-information"))
                    .because(HtmlTable.NOTHING);
        }
        return fields.field(
                "subcooling",
                measured("subcooling"),
                fields.criterion("subcooling", fields.around(Limits.INSTALLER.subcooling())),
                byReadings());
    }

    private String byReadings() {
        if (fields.judgement().isEmpty()) {
            return fields.own("for-information");
        }
        ChargeGrading grading = ChargeGrading.byReadings(fields.report());
        return grading.deviation()
                        .map(deviation -> fields.held(deviation) + ". ")
                        .orElse("")
                + graded(grading);
    }

    private CommissioningFields.Field condensingOverOutdoor() {
        return fields.field(
                "condensing-over-outdoor",
                fields.judgement()
                        .flatMap(each -> CoilDifference.condensingOverOutdoor(each, fields.readings()))
                        .map(each -> fields.difference("condensing-over-outdoor", each)),
                efficiency()
                        .map(Efficiency::condensingOverOutdoor)
                        .map(usual -> fields.criterion(
                                "condensing-over-outdoor-known",
                                fields.figures().limit(usual.low()),
                                fields.figures().limit(usual.high())))
                        .orElseGet(() -> fields.criterion(
                                "condensing-over-outdoor",
                                fields.figures().limit(CoilDifference.OVER_OUTDOOR_OF_LOW_EFFICIENCY),
                                fields.figures().limit(CoilDifference.OVER_OUTDOOR_OF_HIGH_EFFICIENCY.low()),
                                fields.figures().limit(CoilDifference.OVER_OUTDOOR_OF_HIGH_EFFICIENCY.high()))),
                fields.judgement()
                        .flatMap(each -> CoilDifference.condensing(each, fields.readings(), efficiency()))
                        .map(usual -> fields.usual(usual))
                        .orElseGet(() -> fields.own("for-information")));
    }

    /** What was told of it, or of the age, before the last verdict. */
    private Optional<Efficiency> efficiency() {
        return fields.report()
                .finalRound()
                .flatMap(round -> round.assessment().system())
                .flatMap(SystemUnderTest::efficiency);
    }

    private CommissioningFields.Field evaporatingUnderReturn() {
        return fields.field(
                "evaporating-under-return",
                fields.judgement()
                        .flatMap(each -> CoilDifference.evaporatingUnderReturn(each, fields.readings()))
                        .map(each -> fields.difference("evaporating-under-return", each)),
                fields.criterion(
                        "evaporating-under-return",
                        fields.figures().limit(CoilDifference.UNDER_RETURN_AT_400_CFM),
                        Figure.airflowPerTon("airflow-per-ton", 400).shown(),
                        fields.figures().limit(CoilDifference.UNDER_RETURN_AT_350_CFM),
                        Figure.airflowPerTon("airflow-per-ton", 350).shown()),
                fields.own("for-information"));
    }

    /** The suction line is read at the outdoor unit, so it is the superheat that the compressor gets. */
    private CommissioningFields.Field superheatAtCompressor() {
        return fields.field(
                "superheat-at-compressor",
                measured("superheat"),
                fields.criterion("superheat-at-compressor", fields.figures().limit(CautionFinder.LEAST_SAFE_SUPERHEAT)),
                measured("superheat")
                        .map(figure -> fields.met(figure.si() >= CautionFinder.LEAST_SAFE_SUPERHEAT.kelvins()))
                        .orElseGet(() -> fields.own("not-judged")));
    }

    private CommissioningFields.Field dischargeLine() {
        return fields.stated(
                        "discharge-line",
                        Quantity.DISCHARGE_LINE_TEMPERATURE,
                        fields.criterion(
                                "discharge-line", fields.figures().limit(CautionFinder.HOTTEST_DISCHARGE_LINE)))
                .judged(fields.readings()
                        .temperature(Quantity.DISCHARGE_LINE_TEMPERATURE)
                        .map(line -> fields.met(line.compareTo(CautionFinder.HOTTEST_DISCHARGE_LINE) < 0)));
    }
}
