package readback.assistant.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.Figure;
import readback.calc.commissioning.InstallationGrade;
import readback.calc.condition.AirflowPerTon;
import readback.calc.condition.Condition;
import readback.calc.condition.ConditionCheck;
import readback.calc.condition.TemperatureSplit;
import readback.calc.measurement.Limits;
import readback.calc.procedure.SplitCheck;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.targets.TargetFinder;

/** Design, indoor air and the conditions of a charge check in the record of a new installation. */
final class AirFields {

    private static final double PERCENT = 100;

    private final CommissioningFields fields;
    private final Optional<Reading> designAirflow;

    /** @param designAirflow as the designer states it: no session asks for it */
    AirFields(CommissioningFields fields, Optional<Reading> designAirflow) {
        this.fields = fields;
        this.designAirflow = designAirflow;
    }

    List<CommissioningFields.Field> design() {
        return List.of(fields.untold("load"), selection(), designAirflow());
    }

    List<CommissioningFields.Field> air() {
        return List.of(
                fields.unmeasured("duct-leakage"),
                airflow(),
                airflowPerTon(),
                split(),
                fields.stated("static-pressure", Quantity.STATIC_PRESSURE, fields.criterion("static-pressure")),
                fields.unmeasured("fan-power"),
                fields.unmeasured("room-airflow"));
    }

    List<CommissioningFields.Field> conditions() {
        return List.of(
                outdoor(),
                returnAir(),
                wetBulb(),
                fields.answered(Slots.AIR_PATH),
                fields.answered(Slots.STEADY_RUNNING));
    }

    /** The grade of the airflow; empty where it or its design is not known. */
    Optional<InstallationGrade> airflowGrade() {
        return fields.readings()
                .find(Quantity.AIRFLOW)
                .flatMap(measured ->
                        designAirflow.map(design -> InstallationGrade.ofAirflow(measured.base(), design.base())));
    }

    /** What the grade rests on, or why there is none. */
    String airflowBasis() {
        Optional<Reading> measured = fields.readings().find(Quantity.AIRFLOW);
        if (measured.isEmpty()) {
            return fields.texts().label("commissioning.reason.not-measured");
        }
        return designAirflow
                .map(design -> fields.texts()
                        .label(
                                "commissioning.reason.of-design",
                                Figures.tenths(PERCENT * (measured.get().base() / design.base() - 1))))
                .orElseGet(() -> fields.texts().label("commissioning.reason.no-design"));
    }

    private String shown(Reading limit) {
        return fields.figures().limit(limit.temperature());
    }

    private CommissioningFields.Field selection() {
        return fields.stated("selection", Quantity.CAPACITY, fields.criterion("selection"));
    }

    private CommissioningFields.Field designAirflow() {
        return designAirflow
                .map(design -> fields.field(
                        "design-airflow",
                        Optional.of(Figure.of("design-airflow", design)),
                        fields.criterion("design-airflow"),
                        fields.own("not-judged")))
                .orElseGet(() -> fields.untold("design-airflow"));
    }

    private CommissioningFields.Field airflow() {
        return fields.stated(
                        "airflow",
                        Quantity.AIRFLOW,
                        fields.criterion(
                                "airflow",
                                Figures.rounded(PERCENT * InstallationGrade.AIRFLOW_GRADE_I, 0),
                                Figures.rounded(PERCENT * InstallationGrade.AIRFLOW_GRADE_II, 0)))
                .judged(airflowGrade().map(grade -> fields.texts().label("commissioning.grade." + grade.name())));
    }

    private CommissioningFields.Field airflowPerTon() {
        OptionalDouble perTon = AirflowPerTon.of(fields.readings());
        Optional<Figure> figure = perTon.isPresent()
                ? Optional.of(Figure.airflowPerTon("airflow-per-ton", Math.round(perTon.getAsDouble())))
                : Optional.empty();
        return fields.field(
                "airflow-per-ton",
                figure,
                fields.criterion(
                        "airflow-per-ton",
                        Figure.airflowPerTon("airflow-per-ton", Math.round(AirflowPerTon.LEAST))
                                .shown()),
                perTon.isPresent() ? fields.met(AirflowPerTon.enough(perTon.getAsDouble())) : "");
    }

    private CommissioningFields.Field split() {
        Limits limits = fields.report().settings().limits();
        Optional<SplitCheck.Result> result = fields.readings()
                .temperature(Quantity.RETURN_DRY_BULB)
                .flatMap(dry -> fields.readings()
                        .temperature(Quantity.RETURN_WET_BULB)
                        .flatMap(wet -> TemperatureSplit.actual(fields.readings())
                                .flatMap(actual -> SplitCheck.judge(dry, wet, actual, limits))));
        return fields.field(
                "split",
                TemperatureSplit.actual(fields.readings()).map(actual -> fields.difference("split", actual)),
                fields.criterion(
                        "split",
                        fields.around(limits.temperatureSplit()),
                        result.map(each -> fields.figures().shown(each.target()))
                                .orElse(HtmlTable.NOTHING)),
                result.map(each -> fields.met(each.outcome() == SplitCheck.Outcome.SUFFICIENT))
                        .orElseGet(() -> fields.own("not-judged")));
    }

    private CommissioningFields.Field outdoor() {
        return conditioned(
                "outdoor",
                Quantity.OUTDOOR_TEMPERATURE,
                fields.criterion(
                        "outdoor",
                        shown(ConditionCheck.LOWEST_OUTDOOR),
                        shown(ConditionCheck.WINTER_ABOVE),
                        shown(ConditionCheck.WINTER_BELOW)),
                List.of(Condition.OUTDOOR_WARM_ENOUGH, Condition.OUTDOOR_COOL_ENOUGH, Condition.OUTDOOR_INSIDE_TABLE));
    }

    private CommissioningFields.Field returnAir() {
        return conditioned(
                "return-air",
                Quantity.RETURN_DRY_BULB,
                fields.criterion("return-air", shown(ConditionCheck.LOWEST_RETURN)),
                List.of(Condition.RETURN_WARM_ENOUGH));
    }

    private CommissioningFields.Field wetBulb() {
        return conditioned(
                "wet-bulb",
                Quantity.RETURN_WET_BULB,
                fields.criterion("wet-bulb", shown(TargetFinder.LOWEST_WET_BULB), shown(TargetFinder.HIGHEST_WET_BULB)),
                List.of(Condition.WET_BULB_INSIDE_TABLE));
    }

    /** What must hold for a charge check: judged where a charge was. */
    private CommissioningFields.Field conditioned(
            String name, Quantity quantity, String criterion, List<Condition> conditions) {
        String result = fields.judgement()
                .map(judged -> fields.met(
                        judged.conditions().stream().noneMatch(failed -> conditions.contains(failed.condition()))))
                .orElseGet(() -> fields.own("not-judged"));
        return fields.field(
                name, fields.readings().find(quantity).map(reading -> Figure.of(name, reading)), criterion, result);
    }
}
