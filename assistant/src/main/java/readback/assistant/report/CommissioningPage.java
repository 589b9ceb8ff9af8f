package readback.assistant.report;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.About;
import readback.calc.caution.CautionFinder;
import readback.calc.charge.Judgement;
import readback.calc.charge.ValveCheck;
import readback.calc.commissioning.CoilDifference;
import readback.calc.commissioning.InstallationGrade;
import readback.calc.condition.AirflowPerTon;
import readback.calc.condition.Condition;
import readback.calc.condition.ConditionCheck;
import readback.calc.condition.TemperatureSplit;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Limits;
import readback.calc.measurement.Readings;
import readback.calc.name.ConstantName;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.TargetFinder;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/**
 * The record of a new installation: every field that ANSI/ACCA 5 QI and ANSI/RESNET/ACCA 310 ask for, with what the
 * session measured, what it is held against and on whose word. A field that was not measured says so, and nothing is
 * graded without its measurement. Long because it holds the whole list of fields, in the order of the page.
 */
public final class CommissioningPage {

    private static final double PERCENT = 100;

    private final ReportTexts texts;
    private final JobReport report;
    private final Figures figures;
    private final Optional<Reading> designAirflow;
    private final ChargeGrading charge;
    private final Optional<Judgement> judgement;

    /** Those of the last verdict, and what was told besides. */
    private final Readings readings;

    private final Markup page = new Markup();

    private CommissioningPage(JobReport report, Optional<Reading> designAirflow, Language language) {
        this.texts = new ReportTexts(language);
        this.report = report;
        this.figures = new Figures(report.settings().units());
        this.designAirflow = designAirflow;
        this.charge = ChargeGrading.of(report);
        this.judgement = report.finalRound().map(JobReport.Round::judgement);
        Readings judged =
                report.finalRound().map(round -> round.assessment().readings()).orElseGet(Readings::none);
        for (Reading told : report.last().readings().asMap().values()) {
            judged = judged.has(told.quantity()) ? judged : judged.with(told);
        }
        this.readings = judged;
    }

    /**
     * The page.
     *
     * @param designAirflow as the designer states it: no session asks for it
     * @param now when it is made
     */
    public static String of(JobReport report, Optional<Reading> designAirflow, Language language, Instant now) {
        return new CommissioningPage(report, designAirflow, language).whole(now);
    }

    private String whole(Instant now) {
        String title = texts.label("commissioning.title");
        String session = report.session().header().session();
        PageFrame.begin(page, texts, report, title, "commissioning");
        grades();
        job();
        fields("design", List.of(untold("load"), selection(), designAirflow()));
        fields(
                "air",
                List.of(
                        unmeasured("duct-leakage"),
                        airflow(),
                        airflowPerTon(),
                        split(),
                        stated("static-pressure", Quantity.STATIC_PRESSURE, criterion("static-pressure")),
                        unmeasured("fan-power"),
                        unmeasured("room-airflow")));
        fields(
                "conditions",
                List.of(outdoor(), returnAir(), wetBulb(), answered(Slots.AIR_PATH), answered(Slots.STEADY_RUNNING)));
        fields("circuit", List.of(pressureTest(), evacuation(), weighed(), target(), superheat(), subcooling()));
        fields(
                "electric",
                List.of(
                        stated("voltage", Quantity.LINE_VOLTAGE, criterion("voltage")),
                        stated("compressor-current", Quantity.COMPRESSOR_CURRENT, criterion("compressor-current"))));
        fields("handover", List.of(untold("controls"), untold("documents")));
        fields(
                "information",
                List.of(condensingOverOutdoor(), evaporatingUnderReturn(), superheatAtCompressor(), dischargeLine()));
        signatures();
        page.closeLine();
        PageFrame.footer(page, texts, report, session, now);
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private String own(String key, Object... values) {
        return texts.label("commissioning." + key, values);
    }

    private void begin(String heading) {
        page.open("section").element("h2", texts.label(heading));
    }

    /** The five tasks of the standard, each with its grade or why it has none. */
    private void grades() {
        begin("commissioning.grades");
        HtmlTable table = new HtmlTable(
                page,
                texts.label("commissioning.caption.grades"),
                List.of(
                        texts.label("commissioning.column.task"),
                        texts.label("commissioning.column.grade"),
                        texts.label("commissioning.column.basis")));
        grade(table, "design", Optional.empty(), texts.label("commissioning.reason.not-in-record"));
        grade(table, "duct-leakage", Optional.empty(), texts.label("commissioning.reason.not-measured"));
        grade(table, "airflow", airflowGrade(), airflowBasis());
        grade(table, "fan-power", Optional.empty(), texts.label("commissioning.reason.not-measured"));
        grade(table, "charge", charge.grade(), chargeBasis());
        table.end();
        page.element("p", own("note"));
        page.closeLine();
    }

    private void grade(HtmlTable table, String task, Optional<InstallationGrade> grade, String basis) {
        String name = texts.label("commissioning.task." + task);
        if (grade.isPresent()) {
            table.row(name, texts.label("commissioning.grade." + grade.get().name()), basis);
        } else {
            table.missing(name, own("not-graded"), basis);
        }
    }

    private Optional<InstallationGrade> airflowGrade() {
        return readings.find(Quantity.AIRFLOW)
                .flatMap(measured ->
                        designAirflow.map(design -> InstallationGrade.ofAirflow(measured.base(), design.base())));
    }

    private String airflowBasis() {
        Optional<Reading> measured = readings.find(Quantity.AIRFLOW);
        if (measured.isEmpty()) {
            return texts.label("commissioning.reason.not-measured");
        }
        return designAirflow
                .map(design -> texts.label(
                        "commissioning.reason.of-design",
                        Figures.tenths(PERCENT * (measured.get().base() / design.base() - 1))))
                .orElseGet(() -> texts.label("commissioning.reason.no-design"));
    }

    private String chargeBasis() {
        String basis = texts.label("commissioning.reason." + ConstantName.of(charge.reason()));
        return charge.grade().isPresent()
                        && charge.deviation().filter(Comparison::borderline).isPresent()
                ? basis + " " + texts.label("verdict.borderline")
                : basis;
    }

    private void job() {
        begin("job");
        page.open("dl");
        for (String name : List.of(About.CUSTOMER, About.PLACE, About.APPLIANCE, About.TECHNICIAN, About.CERTIFICATE)) {
            fact(texts.label("about." + name), report.about(name));
        }
        for (Slot slot : List.of(Slots.REFRIGERANT, Slots.METERING_DEVICE)) {
            fact(texts.slot(slot), report.answer(slot).map(content -> texts.content(slot, content)));
        }
        page.close().closeLine();
    }

    private void fact(String name, Optional<String> value) {
        page.open("div")
                .element("dt", name)
                .element("dd", value.orElseGet(() -> own("not-in-record")))
                .closeLine();
    }

    /**
     * One field of the record.
     *
     * @param value as it was measured or told; empty for neither
     * @param si the same in the unit of the SI
     * @param lack what stands in place of a value that is not there
     */
    private record Field(
            String name,
            Optional<String> value,
            String si,
            String lack,
            String criterion,
            String source,
            String result) {

        /** The same on another's word. */
        Field because(String other) {
            return new Field(name, value, si, lack, criterion, other, result);
        }

        /** The same with a result, where there is one and the field was measured. */
        Field judged(Optional<String> other) {
            return new Field(
                    name,
                    value,
                    si,
                    lack,
                    criterion,
                    source,
                    other.filter(any -> value.isPresent()).orElse(result));
        }
    }

    private Field field(String name, Optional<Figure> figure, String criterion, String result) {
        return new Field(
                own(name),
                figure.map(Figure::shown),
                figure.map(Figure::siShown).orElse(HtmlTable.NOTHING),
                own("not-measured"),
                criterion,
                texts.label("commissioning.source." + name),
                figure.isPresent() ? result : own("not-judged"));
    }

    private String criterion(String name, Object... values) {
        return texts.label("commissioning.criterion." + name, values);
    }

    private Field unmeasured(String name) {
        return field(name, Optional.empty(), criterion(name), "");
    }

    private Field untold(String name) {
        return new Field(
                own(name),
                Optional.empty(),
                HtmlTable.NOTHING,
                own("not-in-record"),
                criterion(name),
                texts.label("commissioning.source." + name),
                own("not-judged"));
    }

    /** A value with nothing in the record to hold it against. */
    private Field stated(String name, Quantity quantity, String criterion) {
        return field(name, readings.find(quantity).map(reading -> figure(name, reading)), criterion, own("not-judged"));
    }

    private static Figure figure(String name, Reading reading) {
        return Figure.of(name, reading);
    }

    private void fields(String section, List<Field> fields) {
        begin("commissioning.section." + section);
        HtmlTable table = new HtmlTable(
                page,
                texts.label("commissioning.caption." + section),
                List.of(
                        texts.label("column.what"),
                        texts.label("commissioning.column.measured"),
                        texts.label("column.si"),
                        texts.label("commissioning.criterion.column"),
                        texts.label("commissioning.source.column"),
                        texts.label("commissioning.column.result")));
        for (Field field : fields) {
            if (field.value().isPresent()) {
                table.row(
                        field.name(),
                        field.value().get(),
                        field.si(),
                        field.criterion(),
                        field.source(),
                        field.result());
            } else {
                table.missing(
                        field.name(), field.lack(), field.si(), field.criterion(), field.source(), field.result());
            }
        }
        table.end();
        page.closeLine();
    }

    private String met(boolean met) {
        return own(met ? "met" : "not-met");
    }

    private String held(Comparison comparison) {
        return met(comparison.position() == Comparison.Position.INSIDE)
                + (comparison.borderline() ? ", " + texts.label("index.borderline") : "");
    }

    private String shown(Reading limit) {
        return figures.limit(limit.temperature());
    }

    private Field selection() {
        return stated("selection", Quantity.CAPACITY, criterion("selection"));
    }

    private Field designAirflow() {
        return designAirflow
                .map(design -> field(
                        "design-airflow",
                        Optional.of(figure("design-airflow", design)),
                        criterion("design-airflow"),
                        own("not-judged")))
                .orElseGet(() -> untold("design-airflow"));
    }

    private Field airflow() {
        return stated(
                        "airflow",
                        Quantity.AIRFLOW,
                        criterion(
                                "airflow",
                                Figures.rounded(PERCENT * InstallationGrade.AIRFLOW_GRADE_I, 0),
                                Figures.rounded(PERCENT * InstallationGrade.AIRFLOW_GRADE_II, 0)))
                .judged(airflowGrade().map(grade -> texts.label("commissioning.grade." + grade.name())));
    }

    private Field airflowPerTon() {
        OptionalDouble perTon = AirflowPerTon.of(readings);
        Optional<Figure> figure = perTon.isPresent()
                ? Optional.of(Figure.airflowPerTon("airflow-per-ton", Math.round(perTon.getAsDouble())))
                : Optional.empty();
        return field(
                "airflow-per-ton",
                figure,
                criterion(
                        "airflow-per-ton",
                        Figure.airflowPerTon("airflow-per-ton", Math.round(AirflowPerTon.LEAST))
                                .shown()),
                perTon.isPresent() ? met(AirflowPerTon.enough(perTon.getAsDouble())) : "");
    }

    private Field split() {
        Limits limits = report.settings().limits();
        Optional<SplitCheck.Result> result = readings.temperature(Quantity.RETURN_DRY_BULB)
                .flatMap(dry -> readings.temperature(Quantity.RETURN_WET_BULB)
                        .flatMap(wet -> TemperatureSplit.actual(readings)
                                .flatMap(actual -> SplitCheck.judge(dry, wet, actual, limits))));
        return field(
                "split",
                TemperatureSplit.actual(readings).map(actual -> difference("split", actual)),
                criterion(
                        "split",
                        around(limits.temperatureSplit()),
                        result.map(each -> figures.shown(each.target())).orElse(HtmlTable.NOTHING)),
                result.map(each -> met(each.outcome() == SplitCheck.Outcome.SUFFICIENT))
                        .orElseGet(() -> own("not-judged")));
    }

    private Figure difference(String name, TemperatureDifference difference) {
        return Figure.difference(name, difference, report.settings().units());
    }

    /** Half of a band that lies evenly around the target. */
    private String around(Band band) {
        return figures.limit(band.high());
    }

    private Field outdoor() {
        return conditioned(
                "outdoor",
                Quantity.OUTDOOR_TEMPERATURE,
                criterion(
                        "outdoor",
                        shown(ConditionCheck.LOWEST_OUTDOOR),
                        shown(ConditionCheck.WINTER_ABOVE),
                        shown(ConditionCheck.WINTER_BELOW)),
                List.of(Condition.OUTDOOR_WARM_ENOUGH, Condition.OUTDOOR_COOL_ENOUGH, Condition.OUTDOOR_INSIDE_TABLE));
    }

    private Field returnAir() {
        return conditioned(
                "return-air",
                Quantity.RETURN_DRY_BULB,
                criterion("return-air", shown(ConditionCheck.LOWEST_RETURN)),
                List.of(Condition.RETURN_WARM_ENOUGH));
    }

    private Field wetBulb() {
        return conditioned(
                "wet-bulb",
                Quantity.RETURN_WET_BULB,
                criterion("wet-bulb", shown(TargetFinder.LOWEST_WET_BULB), shown(TargetFinder.HIGHEST_WET_BULB)),
                List.of(Condition.WET_BULB_INSIDE_TABLE));
    }

    /** What must hold for a charge check: judged where a charge was. */
    private Field conditioned(String name, Quantity quantity, String criterion, List<Condition> conditions) {
        String result = judgement
                .map(judged ->
                        met(judged.conditions().stream().noneMatch(failed -> conditions.contains(failed.condition()))))
                .orElseGet(() -> own("not-judged"));
        return field(name, readings.find(quantity).map(reading -> figure(name, reading)), criterion, result);
    }

    private Field answered(Slot slot) {
        return new Field(
                texts.slot(slot),
                report.answer(slot).map(content -> texts.content(slot, content)),
                HtmlTable.NOTHING,
                own("not-in-record"),
                criterion(slot.id()),
                texts.label("commissioning.source." + slot.id()),
                report.answer(slot)
                        .map(content -> met(content.line().equals("yes")))
                        .orElseGet(() -> own("not-judged")));
    }

    /** The last result of a kind, of the last time that it was judged. */
    private Optional<JobReport.Result> latest(Class<? extends JobOutcome> kind) {
        return report.results().stream()
                .filter(result -> kind.isInstance(result.outcome()))
                .reduce((earlier, later) -> later);
    }

    private static Optional<Figure> figure(Optional<JobReport.Result> result, String name) {
        return result.stream()
                .flatMap(each -> each.figures().stream())
                .filter(figure -> figure.name().equals(name))
                .findFirst();
    }

    private String named(JobReport.Result result, boolean met, boolean judged) {
        return judged
                ? met(met)
                : own("not-judged") + ": " + texts.outcome(result.outcome().name());
    }

    private Field pressureTest() {
        Optional<JobReport.Result> result = latest(JobOutcome.PressureTest.class);
        return field(
                "pressure-test",
                figure(result, "loss"),
                criterion("pressure-test"),
                result.map(each -> {
                            StandingPressure.Outcome outcome = ((JobOutcome.PressureTest) each.outcome()).outcome();
                            return named(
                                    each,
                                    outcome == StandingPressure.Outcome.TIGHT,
                                    outcome != StandingPressure.Outcome.NOT_SETTLED);
                        })
                        .orElse(""));
    }

    private Field evacuation() {
        Optional<JobReport.Result> result = latest(JobOutcome.Evacuation.class);
        return field(
                "evacuation",
                figure(result, "vacuum-held"),
                criterion(
                        "evacuation", figure(result, "limit").map(Figure::shown).orElseGet(() -> own("a-limit"))),
                result.map(each -> {
                            VacuumDecay.Outcome outcome = ((JobOutcome.Evacuation) each.outcome()).outcome();
                            return named(
                                    each, outcome == VacuumDecay.Outcome.TIGHT, outcome != VacuumDecay.Outcome.WAIT);
                        })
                        .orElse(""));
    }

    private Field weighed() {
        ChargeGrading weight = ChargeGrading.byWeight(report);
        Optional<JobReport.Result> result = latest(JobOutcome.WeighedIn.class);
        Optional<Figure> target = figure(result, "to-weigh-in");
        return field(
                "weighed-in",
                figure(result, "weighed-in"),
                target.map(each -> criterion(
                                "weighed-in",
                                figures.shown(WeighIn.tolerance(Mass.kilograms(each.si()))),
                                each.shown()))
                        .orElseGet(() -> texts.label("commissioning.criterion.weighed-in-open")),
                graded(weight));
    }

    private String graded(ChargeGrading grading) {
        return grading.grade()
                .map(grade -> texts.label("commissioning.grade." + grade.name()))
                .orElseGet(() -> own("not-graded") + ": "
                        + texts.label("commissioning.reason." + ConstantName.of(grading.reason())));
    }

    private Optional<Figure> ofCharge(String name) {
        return report.finalRound().stream()
                .flatMap(round -> round.outcome().figures(report.settings().units()).stream())
                .filter(figure -> figure.name().equals(name))
                .findFirst();
    }

    private Field target() {
        String source = judgement
                .flatMap(Judgement::target)
                .map(target -> texts.label("source." + target.source().name()))
                .orElseGet(() -> texts.label("commissioning.source.target"));
        return field("target", ofCharge("target"), criterion("target"), HtmlTable.NOTHING)
                .because(source);
    }

    private boolean judgedBy(ChargeMethod method) {
        return judgement.filter(each -> each.method() == method).isPresent();
    }

    /** What was measured of a charge; of one that was weighed in, by its functional check. */
    private Optional<Figure> measured(String name) {
        return ofCharge(name).or(() -> figure(latest(JobOutcome.Functional.class), name));
    }

    private Field superheat() {
        if (!judgedBy(ChargeMethod.SUBCOOLING)) {
            return field(
                    "superheat",
                    measured("superheat"),
                    criterion("superheat", around(Limits.INSTALLER.superheat())),
                    byReadings());
        }
        Optional<ValveCheck> valve = judgement.flatMap(Judgement::valveCheck);
        Band range = valve.map(check -> check.superheat().limits())
                .orElseGet(() -> report.settings().limits().valveSuperheat());
        return field(
                        "superheat",
                        measured("superheat"),
                        texts.label(
                                "commissioning.criterion.superheat-valve",
                                figures.limit(range.low()),
                                figures.limit(range.high())),
                        valve.map(check -> held(check.superheat())).orElseGet(() -> own("not-judged")))
                .because(texts.label("commissioning.source.superheat-valve"));
    }

    private Field subcooling() {
        if (judgedBy(ChargeMethod.TOTAL_SUPERHEAT)) {
            return field(
                            "subcooling",
                            measured("subcooling"),
                            texts.label("commissioning.criterion.subcooling-orifice"),
                            own("for-information"))
                    .because(HtmlTable.NOTHING);
        }
        return field(
                "subcooling",
                measured("subcooling"),
                criterion("subcooling", around(Limits.INSTALLER.subcooling())),
                byReadings());
    }

    private String byReadings() {
        if (judgement.isEmpty()) {
            return own("for-information");
        }
        ChargeGrading grading = ChargeGrading.byReadings(report);
        return grading.deviation().map(deviation -> held(deviation) + ". ").orElse("") + graded(grading);
    }

    private Field condensingOverOutdoor() {
        return field(
                "condensing-over-outdoor",
                judgement
                        .flatMap(each -> CoilDifference.condensingOverOutdoor(each, readings))
                        .map(each -> difference("condensing-over-outdoor", each)),
                criterion(
                        "condensing-over-outdoor",
                        figures.limit(CoilDifference.OVER_OUTDOOR_OF_LOW_EFFICIENCY),
                        figures.limit(CoilDifference.OVER_OUTDOOR_OF_HIGH_EFFICIENCY.low()),
                        figures.limit(CoilDifference.OVER_OUTDOOR_OF_HIGH_EFFICIENCY.high())),
                own("for-information"));
    }

    private Field evaporatingUnderReturn() {
        return field(
                "evaporating-under-return",
                judgement
                        .flatMap(each -> CoilDifference.evaporatingUnderReturn(each, readings))
                        .map(each -> difference("evaporating-under-return", each)),
                criterion(
                        "evaporating-under-return",
                        figures.limit(CoilDifference.UNDER_RETURN_AT_400_CFM),
                        Figure.airflowPerTon("airflow-per-ton", 400).shown(),
                        figures.limit(CoilDifference.UNDER_RETURN_AT_350_CFM),
                        Figure.airflowPerTon("airflow-per-ton", 350).shown()),
                own("for-information"));
    }

    /** The suction line is read at the outdoor unit, so it is the superheat that the compressor gets. */
    private Field superheatAtCompressor() {
        return field(
                "superheat-at-compressor",
                measured("superheat"),
                criterion("superheat-at-compressor", figures.limit(CautionFinder.LEAST_SAFE_SUPERHEAT)),
                own("for-information"));
    }

    private Field dischargeLine() {
        return stated(
                        "discharge-line",
                        Quantity.DISCHARGE_LINE_TEMPERATURE,
                        criterion("discharge-line", figures.limit(CautionFinder.HOTTEST_DISCHARGE_LINE)))
                .judged(Optional.of(own("for-information")));
    }

    private void signatures() {
        page.open("section", "class", "signatures").element("h2", texts.label("signatures"));
        PageFrame.signatures(
                page,
                texts,
                List.of(About.TECHNICIAN, About.CUSTOMER),
                who -> report.about(who).orElse(" "));
        page.closeLine();
    }
}
