package readback.assistant.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.About;
import readback.assistant.replay.Difference;
import readback.assistant.session.Build;
import readback.calc.charge.Judgement;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.MeteringDevice;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.targets.Target;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;

/**
 * A report as one HTML page that needs nothing else: no script, no other file, prints on paper. Whatever came from the
 * session is inert text.
 */
public final class ReportPage {

    /** Nothing may be loaded, whatever a text of the session says. */
    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

    /**
     * Joules a kilogram of the saturated liquid at 0 °C, by which enthalpies count: the reference state of the
     * International Institute of Refrigeration.
     */
    private static final double LIQUID_AT_FREEZING = 200_000;

    private final ReportTexts texts;
    private final JobReport report;
    private final Figures figures;
    private final List<String> debrief;
    private final Markup page = new Markup();

    private ReportPage(JobReport report, Language language, List<String> debrief) {
        this.debrief = List.copyOf(debrief);
        this.texts = new ReportTexts(language);
        this.report = report;
        this.figures = new Figures(report.settings().units());
    }

    /**
     * The page.
     *
     * @param now when the report is made
     */
    public static String of(JobReport report, Language language, Instant now) {
        return of(report, language, now, List.of());
    }

    /**
     * The page of a practice call.
     *
     * @param debrief how it went, the result first; nothing of real work
     */
    public static String of(JobReport report, Language language, Instant now, List<String> debrief) {
        return new ReportPage(report, language, debrief).whole(now);
    }

    /** The report tells the time of the place where the work was done. */
    private ZoneId zone() {
        return report.session().header().shownIn();
    }

    private String whole(Instant now) {
        begin(
                page,
                texts.tag(),
                texts.title(report.settings().job()) + " "
                        + report.session().header().session());
        page.open("header");
        page.element("h1", texts.title(report.settings().job()));
        page.element(
                "p",
                texts.label("made") + " " + texts.moment(now, zone()) + ". " + texts.label("session") + " "
                        + report.session().header().session(),
                "class",
                "quiet");
        page.closeLine();
        page.open("main");
        practice();
        trouble();
        verdict();
        job();
        Sections sections = new Sections(texts, figures, report, page);
        sections.answers();
        method();
        sections.results();
        course();
        enthalpy();
        sections.cautions();
        sections.moves();
        sections.doubts();
        sections.notes();
        ServiceRecord.section(texts, figures, report, page);
        signatures();
        trust();
        sections.conversation();
        page.closeLine();
        page.open("footer").element("p", texts.label("advice")).closeLine();
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    /** Opens a page up to its body. */
    static void begin(Markup page, String language, String title) {
        begin(page, language, title, "record");
    }

    /** The same with the kind of page, which its style goes by. */
    static void begin(Markup page, String language, String title, String kind) {
        page.open("html", "lang", language).open("head");
        page.open("meta", "charset", "utf-8");
        page.open("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
        page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.element("title", title);
        page.style(css());
        page.closeLine();
        page.open("body", "class", kind);
    }

    private static String css() {
        try (InputStream in = ReportPage.class.getResourceAsStream("/readback/assistant/report/report.css")) {
            if (in == null) {
                throw new IllegalStateException("the installation lacks the report's style");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the installation cannot be read", e);
        }
    }

    /** That nothing of it is real, and how it went. */
    private void practice() {
        if (debrief.isEmpty()) {
            return;
        }
        page.open("section", "class", "practice").element("h2", texts.label("practice"));
        page.element("p", debrief.get(0), "class", "outcome");
        page.open("ul");
        debrief.subList(1, debrief.size()).forEach(line -> page.element("li", line));
        page.close().closeLine();
    }

    /** What the reader must know before anything else. */
    private void trouble() {
        if (report.verification().identical() && report.session().closed()) {
            return;
        }
        page.open("section", "class", "trouble").element("h2", texts.label("trouble"));
        report.session()
                .fault()
                .ifPresent(fault -> page.element("p", texts.label("trouble.fault") + " " + texts.fault(fault) + "."));
        report.verification().difference().ifPresent(found -> page.element("p", different(found)));
        if (!report.session().closed()) {
            page.element("p", texts.label("trouble.open"));
        }
        page.closeLine();
    }

    /** Another result is no alarm where another version made the record. */
    private String different(Difference found) {
        return report.verification().byAnotherVersion()
                ? texts.otherVersion(report.verification(), found)
                : texts.label("trouble.difference") + " " + texts.difference(found) + ".";
    }

    private void verdict() {
        page.open("section", "class", "verdict").element("h2", texts.label("verdict"));
        Optional<JobReport.Round> round = report.finalRound();
        if (round.isEmpty()) {
            otherVerdicts();
            page.closeLine();
            return;
        }
        Judgement judgement = round.get().judgement();
        page.element("p", texts.outcome(round.get().outcome().name()), "class", "outcome");
        if (judgement.verdict().borderline()) {
            page.element("p", texts.label("verdict.borderline"), "class", "borderline");
        }
        if (report.last().verdict().isEmpty()) {
            page.element("p", texts.label("verdict.superseded"), "class", "borderline");
        }
        new Drawings(texts, figures)
                .verdictBar(judgement)
                .ifPresent(plot -> figure(plot.drawing(false), texts.label("plot.deviation.caption")));
        page.closeLine();
    }

    /** What other jobs came to, each with its figures, where the charge was not judged. */
    private void otherVerdicts() {
        List<JobReport.Result> results = report.latestResults();
        if (results.isEmpty()) {
            page.element("p", texts.label("verdict.none"), "class", "outcome");
        }
        for (JobReport.Result result : results) {
            page.element("p", texts.outcome(result.outcome().name()), "class", "outcome");
            page.open("dl");
            result.figures().forEach(figure -> fact(texts.figure(figure), texts.shown(figure)));
            page.closeLine();
        }
    }

    private void figure(Markup drawing, String caption) {
        page.open("figure").add(drawing).element("figcaption", caption).closeLine();
    }

    private void job() {
        page.open("section").element("h2", texts.label("job"));
        page.open("dl");
        About.ALL.forEach(name -> report.about(name).ifPresent(value -> fact(texts.label("about." + name), value)));
        fact(texts.label("started"), texts.moment(report.session().header().startedAt(), zone()));
        report.last()
                .refrigerant()
                .map(ReportPage::refrigerant)
                .ifPresent(value -> fact(texts.slot(Slots.REFRIGERANT), value));
        report.last()
                .system()
                .ifPresent(system -> fact(texts.slot(Slots.METERING_DEVICE), device(system.meteringDevice())));
        fact(
                texts.slot(Slot.of(Quantity.ALTITUDE)),
                report.last()
                        .readings()
                        .find(Quantity.ALTITUDE)
                        .map(altitude -> Fact.amount(altitude).shown())
                        .orElseGet(() -> texts.label("altitude.assumed")));
        fact(texts.label("air"), figures.shown(report.last().air()));
        fact(
                texts.label("limits"),
                texts.label("limits." + report.settings().limits().name()));
        instruments(report.last());
        page.close().closeLine();
    }

    /** How good each kind of instrument was taken for, and on whose word. */
    private void instruments(Assessment last) {
        InstrumentAccuracy accuracy = last.instruments();
        boolean percent = last.readings().has(Quantity.GAUGE_ACCURACY_OF_READING)
                && !last.readings().has(Quantity.GAUGE_ACCURACY);
        String gauges = percent
                ? last.readings()
                        .find(Quantity.GAUGE_ACCURACY_OF_READING)
                        .map(share -> Fact.amount(share).shown() + " " + texts.label("instruments.of-reading"))
                        .orElse("")
                : figures.difference(accuracy.suctionGauge().fixed()) + ", "
                        + figures.difference(accuracy.liquidGauge().fixed());
        good("gauges", gauges, percent || last.readings().has(Quantity.GAUGE_ACCURACY));
        good("clamps", figures.shown(accuracy.lineProbe()), last.readings().has(Quantity.CLAMP_ACCURACY));
        good("wet-bulb", figures.shown(accuracy.wetBulbProbe()), last.readings().has(Quantity.WET_BULB_ACCURACY));
        good("air-probes", figures.shown(accuracy.airProbe()), last.readings().has(Quantity.AIR_PROBE_ACCURACY));
    }

    private void good(String kind, String limit, boolean stated) {
        fact(
                texts.label("instruments." + kind),
                "±" + limit + ", " + texts.label(stated ? "instruments.stated" : "instruments.ordinary"));
    }

    private static String refrigerant(Refrigerant refrigerant) {
        return refrigerant.designation() + ", " + refrigerant.safetyClass().name();
    }

    private String device(MeteringDevice device) {
        return texts.option(Slots.METERING_DEVICE, ConstantName.of(device));
    }

    private void fact(String name, String value) {
        page.open("div").element("dt", name).element("dd", value).closeLine();
    }

    private void method() {
        Optional<JobReport.Round> round = report.finalRound();
        if (round.isEmpty()) {
            return;
        }
        Judgement judgement = round.get().judgement();
        page.open("section").element("h2", texts.label("method"));
        page.open("dl");
        fact(
                texts.label("method.name"),
                texts.label("method." + judgement.method().name()));
        judgement.evaporatingSaturation().ifPresent(t -> fact(texts.label("evaporating"), figures.shown(t)));
        judgement.condensingSaturation().ifPresent(t -> fact(texts.label("condensing"), figures.shown(t)));
        judgement.superheat().ifPresent(estimate -> fact(texts.label("superheat"), interval(estimate)));
        judgement.subcooling().ifPresent(estimate -> fact(texts.label("subcooling"), interval(estimate)));
        judgement.target().ifPresent(target -> fact(texts.label("target"), target(target)));
        page.closeLine();
        page.open("ul");
        report.reasons().forEach(reason -> page.element("li", reason));
        page.close().closeLine();
    }

    private String interval(readback.calc.measurement.Estimate estimate) {
        return figures.shown(estimate.value()) + " ±" + figures.shown(estimate.expandedUncertainty()) + " ("
                + texts.label("interval") + ")";
    }

    private String target(Target target) {
        return figures.shown(target.value()) + ", "
                + texts.label("source." + target.source().name());
    }

    private void course() {
        Optional<Plot> plot = new Drawings(texts, figures).course(report);
        if (plot.isEmpty()) {
            return;
        }
        page.open("section").element("h2", texts.label("course"));
        figure(plot.get().drawing(true), texts.label("course.caption"));
        HtmlTable table = new HtmlTable(
                page,
                texts.label("course.table"),
                List.of(
                        texts.label("column.time"),
                        texts.label("superheat"),
                        texts.label("subcooling"),
                        texts.label("target"),
                        texts.label("verdict")));
        for (JobReport.Round round : report.rounds()) {
            table.row(
                    Figures.clock(report.session().header().startedAt(), round.at()),
                    round.judgement()
                            .superheat()
                            .map(each -> figures.shown(each.value()))
                            .orElse(HtmlTable.NOTHING),
                    round.judgement()
                            .subcooling()
                            .map(each -> figures.shown(each.value()))
                            .orElse(HtmlTable.NOTHING),
                    round.judgement()
                            .target()
                            .map(each -> figures.shown(each.value()))
                            .orElse(HtmlTable.NOTHING),
                    texts.outcome(round.outcome().name()));
        }
        table.end();
        page.closeLine();
    }

    private void enthalpy() {
        Optional<PressureEnthalpy> diagram = PressureEnthalpy.of(
                report.finalRound().map(JobReport.Round::assessment).orElse(report.last()));
        if (diagram.isEmpty()) {
            return;
        }
        page.open("section").element("h2", texts.label("enthalpy"));
        figure(
                new Drawings(texts, figures).pressureEnthalpy(diagram.get()).drawing(true),
                texts.label(
                        "enthalpy.caption",
                        figures.shown(Temperature.celsius(0)),
                        figures.enthalpyShown(LIQUID_AT_FREEZING)));
        diagram.get()
                .missing()
                .forEach(place ->
                        page.element("p", texts.label("point." + place) + ": " + texts.label("enthalpy.missing")));
        HtmlTable table = new HtmlTable(
                page,
                texts.label("enthalpy.table"),
                List.of(
                        texts.label("column.point"),
                        texts.label("column.pressure"),
                        texts.label("column.temperature"),
                        texts.label("column.enthalpy"),
                        texts.label("column.density")));
        for (PressureEnthalpy.Point point : diagram.get().points()) {
            table.row(
                    texts.label("point." + point.place().name()),
                    figures.shown(point.state().pressure()),
                    figures.shown(point.state().temperature()),
                    figures.enthalpyShown(point.state().enthalpy()),
                    figures.densityShown(point.state().density()));
        }
        table.end();
        page.closeLine();
    }

    private void signatures() {
        page.open("section", "class", "signatures").element("h2", texts.label("signatures"));
        String signedOff = report.answer(new Slot("sign-off"))
                .map(done -> texts.label("signed-off"))
                .orElse(report.session().closed() ? texts.label("closed-only") : texts.label("trouble.open"));
        page.element("p", signedOff);
        PageFrame.signatures(
                page,
                texts,
                List.of(About.TECHNICIAN, About.CUSTOMER, "supervisor"),
                who -> report.about(who).orElse(" "));
        page.closeLine();
    }

    private void trust() {
        page.open("section").element("h2", texts.label("trust"));
        page.open("dl");
        fact(texts.label("hash"), report.session().hash());
        fact(texts.label("events"), String.valueOf(report.session().entries().size()));
        fact(texts.label("program"), report.session().header().program());
        fact(texts.label("page-program"), Build.ofThisProgram().name());
        report.session().header().parts().entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .forEach(part -> fact(texts.part(part.getKey()), part.getValue()));
        page.closeLine();
        page.open("ul");
        texts.sentences(report.verification()).forEach(sentence -> page.element("li", sentence));
        page.closeLine();
        page.element("p", texts.label("trust.note"));
        page.closeLine();
    }
}
