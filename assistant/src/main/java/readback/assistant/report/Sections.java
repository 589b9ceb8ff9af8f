package readback.assistant.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Understood;
import readback.assistant.record.Entry;
import readback.assistant.record.Remark;
import readback.assistant.replay.ChargeMoves;
import readback.calc.procedure.RefrigerantBalance.Direction;
import readback.calc.quantity.Mass;
import readback.grammar.Command;

/** The parts of a report that list what happened, in order. */
final class Sections {

    private final ReportTexts texts;
    private final Figures figures;
    private final JobReport report;
    private final Markup page;

    Sections(ReportTexts texts, Figures figures, JobReport report, Markup page) {
        this.texts = texts;
        this.figures = figures;
        this.report = report;
        this.page = page;
    }

    private String time(Instant at) {
        return Figures.clock(report.session().header().startedAt(), at);
    }

    private void begin(String heading) {
        page.open("section").element("h2", texts.label(heading));
    }

    /** Every answer with what it was before. */
    void answers() {
        begin("answers");
        HtmlTable table = new HtmlTable(
                page,
                texts.label("answers.caption"),
                columns("column.what", "column.value", "column.time", "column.earlier"));
        for (JobReport.AnswerLine line : report.answers()) {
            table.row(texts.slot(line.slot()), value(line) + remarks(line), time(line.at()), earlier(line));
        }
        table.end();
        page.closeLine();
    }

    /** How the value came to be, where there is more to say than that it was called out. */
    private String remarks(JobReport.AnswerLine line) {
        List<String> remarks = new ArrayList<>();
        if (line.confirmed()) {
            remarks.add(texts.label("confirmed"));
        }
        line.content()
                .flatMap(Content::probe)
                .ifPresent(probe -> remarks.add(texts.label(
                        "from-probe", probe.probe(), probe.channel(), probe.raw(), time(probe.measuredAt()))));
        return remarks.isEmpty() ? "" : " (" + String.join("; ", remarks) + ")";
    }

    private String value(JobReport.AnswerLine line) {
        Understood understood =
                report.session().entries().get(line.event() - 1).outcome().understood();
        boolean takenBack = understood.orders(Command.SCRATCH_THAT);
        return line.content()
                .map(content -> texts.content(line.slot(), content))
                .orElseGet(() -> texts.label(takenBack ? "content.removed" : "cleared"));
    }

    private String earlier(JobReport.AnswerLine line) {
        List<String> before = new ArrayList<>();
        line.earlier()
                .forEach(each -> before.add(texts.content(line.slot(), each.content()) + " (" + time(each.at()) + ")"));
        return before.isEmpty() ? HtmlTable.NOTHING : String.join(", ", before);
    }

    private List<String> columns(String... keys) {
        return List.of(keys).stream().map(texts::label).toList();
    }

    /** Outcomes of other jobs done in the same session. */
    void results() {
        if (report.results().isEmpty()) {
            return;
        }
        begin("results");
        HtmlTable table = new HtmlTable(
                page,
                texts.label("results.caption"),
                columns("column.time", "column.outcome", "column.figures", "column.said"));
        for (JobReport.Result result : report.results()) {
            table.row(
                    time(result.at()),
                    texts.outcome(result.outcome().name()),
                    result.figures().stream()
                            .map(figure -> texts.figure(figure) + " " + texts.shown(figure))
                            .collect(Collectors.joining(", ")),
                    String.join(" ", result.said()));
        }
        table.end();
        page.closeLine();
    }

    /** Cautions given and what was said to them. */
    void cautions() {
        begin("cautions");
        if (report.cautions().isEmpty()) {
            page.element("p", texts.label("cautions.none")).closeLine();
            return;
        }
        HtmlTable table = new HtmlTable(
                page,
                texts.label("cautions.caption"),
                columns("column.signal", "column.caution", "column.time", "column.acknowledged"));
        for (JobReport.CautionLine line : report.cautions()) {
            String signal = texts.signal(line.rule().signal());
            table.row(signal.toUpperCase(Locale.ROOT), texts.caution(line.rule()), time(line.at()), acknowledged(line));
        }
        table.end();
        page.closeLine();
    }

    private String acknowledged(JobReport.CautionLine line) {
        if (line.acknowledged().isPresent()) {
            return texts.label("acknowledged") + " "
                    + time(report.session()
                            .entries()
                            .get(line.acknowledged().getAsInt() - 1)
                            .event()
                            .at());
        }
        return texts.label(line.needed() ? "acknowledged.not" : "acknowledged.unneeded");
    }

    /** Refrigerant in and out, with sums. */
    void moves() {
        begin("moves");
        ChargeMoves moves = report.moves();
        if (moves.moves().isEmpty()) {
            page.element("p", texts.label("moves.none")).closeLine();
            return;
        }
        HtmlTable table = new HtmlTable(
                page, texts.label("moves.caption"), columns("column.time", "column.moved", "column.cylinder"));
        for (ChargeMoves.Move move : moves.moves()) {
            table.row(time(move.at()), Drawings.moved(move), cylinder(move.cylinder()));
        }
        table.end();
        page.open("dl");
        fact(texts.label("added"), amount(Direction.IN, moves.balance().added()));
        fact(texts.label("recovered"), amount(Direction.OUT, moves.balance().recovered()));
        fact(texts.label("net"), figures.shown(moves.balance().net()));
        for (Map.Entry<String, Mass> each : moves.balance().byCylinder().entrySet()) {
            fact(texts.label("from-cylinder") + " " + cylinder(each.getKey()), figures.shown(each.getValue()));
        }
        page.close().closeLine();
    }

    private String amount(Direction direction, Mass amount) {
        return report.moves().said(direction) ? figures.shown(amount) : texts.label("not-said");
    }

    private String cylinder(String number) {
        return number.isEmpty() ? texts.label("cylinder.unnamed") : number;
    }

    private void fact(String name, String value) {
        page.open("div").element("dt", name).element("dd", value).closeLine();
    }

    /** What was doubtful and how it was settled. */
    void doubts() {
        begin("doubts");
        if (report.doubts().isEmpty()) {
            page.element("p", texts.label("doubts.none")).closeLine();
            return;
        }
        HtmlTable table = new HtmlTable(
                page,
                texts.label("doubts.caption"),
                columns("column.time", "column.heard", "column.understood", "column.answer", "column.settled"));
        for (JobReport.DoubtLine doubt : report.doubts()) {
            table.row(
                    time(doubt.at()),
                    String.join("; ", doubt.heard()),
                    texts.understood(doubt.understood()),
                    doubt.answer(),
                    settled(doubt));
        }
        table.end();
        page.closeLine();
    }

    private String settled(JobReport.DoubtLine doubt) {
        List<String> changes = new ArrayList<>();
        doubt.settled().forEach(change -> changes.add(texts.slot(change.slot()) + " " + texts.content(change)));
        return changes.isEmpty() ? texts.label("doubts.open") : String.join(", ", changes);
    }

    /** Notes of the technician, remarks of the supervisor. */
    void notes() {
        begin("notes");
        if (report.notes().isEmpty() && report.remarks().all().isEmpty()) {
            page.element("p", texts.label("notes.none"));
        }
        if (!report.notes().isEmpty()) {
            page.open("ul");
            report.notes().forEach(note -> page.element("li", time(note.at()) + "  " + note.words()));
            page.closeLine();
        }
        for (Remark remark : report.remarks().all()) {
            page.open("blockquote")
                    .element("p", remark.text())
                    .element(
                            "footer",
                            texts.label("remark") + " " + remark.by() + ", "
                                    + texts.moment(
                                            remark.at(),
                                            report.session().header().shownIn()) + " (" + seen(remark) + ")")
                    .closeLine();
        }
        report.remarks()
                .fault()
                .ifPresent(fault -> page.element("p", texts.label("remark.fault") + " " + texts.fault(fault) + "."));
        page.closeLine();
    }

    private String seen(Remark remark) {
        return texts.label(
                remark.about().equals(report.session().hash()) ? "remark.about-this" : "remark.about-earlier");
    }

    /** Everything said, both sides. */
    void conversation() {
        page.open("section", "class", "conversation").element("h2", texts.label("conversation"));
        HtmlTable table = new HtmlTable(
                page,
                texts.label("conversation.caption"),
                columns("column.time", "column.heard", "column.understood", "column.said"));
        for (Entry entry : report.session().entries()) {
            table.row(
                    time(entry.event().at()),
                    heard(entry.event()).orElse(HtmlTable.NOTHING),
                    texts.understood(entry.outcome().understood()),
                    String.join(" ", entry.said()));
        }
        table.end();
        page.closeLine();
    }

    private static Optional<String> heard(Event event) {
        return event instanceof Event.Heard heard && !heard.hypotheses().isEmpty()
                ? Optional.of(heard.hypotheses().get(0).words())
                : Optional.empty();
    }
}
