package readback.assistant.report;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.About;
import readback.calc.commissioning.InstallationGrade;
import readback.calc.measurement.Comparison;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/**
 * The record of a new installation: every field that ANSI/ACCA 5 QI and ANSI/RESNET/ACCA 310 ask for, with what the
 * session measured, what it is held against and on whose word. A field that was not measured says so, and nothing is
 * graded without its measurement.
 */
public final class CommissioningPage {

    private final ReportTexts texts;
    private final JobReport report;
    private final ChargeGrading charge;
    private final CommissioningFields fields;
    private final AirFields air;
    private final CircuitFields circuit;
    private final Markup page = new Markup();

    private CommissioningPage(JobReport report, Optional<Reading> designAirflow, Language language) {
        this.texts = new ReportTexts(language);
        this.report = report;
        this.charge = ChargeGrading.of(report);
        this.fields = new CommissioningFields(report, texts);
        this.air = new AirFields(fields, designAirflow);
        this.circuit = new CircuitFields(fields);
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
        table("design", air.design());
        table("air", air.air());
        table("conditions", air.conditions());
        table("circuit", circuit.circuit());
        table(
                "electric",
                List.of(
                        fields.stated("voltage", Quantity.LINE_VOLTAGE, fields.criterion("voltage")),
                        fields.stated(
                                "compressor-current",
                                Quantity.COMPRESSOR_CURRENT,
                                fields.criterion("compressor-current"))));
        table("handover", List.of(fields.untold("controls"), fields.untold("documents")));
        table("information", circuit.information());
        PageFrame.signOff(page, texts, who -> report.about(who).orElse(" "));
        page.closeLine();
        PageFrame.footer(page, texts, report, session, now);
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
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
        grade(table, "airflow", air.airflowGrade(), air.airflowBasis());
        grade(table, "fan-power", Optional.empty(), texts.label("commissioning.reason.not-measured"));
        grade(table, "charge", charge.grade(), chargeBasis());
        table.end();
        page.element("p", fields.own("note"));
        page.closeLine();
    }

    private void grade(HtmlTable table, String task, Optional<InstallationGrade> grade, String basis) {
        String name = texts.label("commissioning.task." + task);
        if (grade.isPresent()) {
            table.row(name, texts.label("commissioning.grade." + grade.get().name()), basis);
        } else {
            table.missing(name, fields.own("not-graded"), basis);
        }
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
        for (Slot slot : List.of(Slots.MICRO_CHANNEL, Slots.ACCUMULATOR)) {
            report.answer(slot)
                    .map(content -> texts.content(slot, content))
                    .ifPresent(told -> fact(texts.slot(slot), Optional.of(told)));
        }
        page.close().closeLine();
    }

    private void fact(String name, Optional<String> value) {
        page.open("div")
                .element("dt", name)
                .element("dd", value.orElseGet(() -> fields.own("not-in-record")))
                .closeLine();
    }

    private void table(String section, List<CommissioningFields.Field> rows) {
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
        for (CommissioningFields.Field field : rows) {
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
}
