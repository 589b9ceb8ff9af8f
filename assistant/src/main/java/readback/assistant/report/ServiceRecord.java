package readback.assistant.report;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.About;
import readback.calc.quantity.Quantity;
import readback.prompts.checklist.Slot;

/**
 * The record set that the rules for servicing ask for. What the session does not tell is left blank, to be filled in by
 * hand: an invented or silently missing entry would be worse than a blank line.
 *
 * <p>Sources: U.S. 40 CFR 82.157(l)(2) (service record), 82.156(a)(3) (disposal), 82.161 (certificate), 84.106 (leak
 * repair from 2026, with its exemption of residential and light commercial cooling), Regulation (EU) 2024/573 articles
 * 4 to 7; all from memory, to be checked against the current text. Record years: 3 in the U.S., 5 in the E.U.
 */
final class ServiceRecord {

    private ServiceRecord() {}

    /** One entry: its label and what the session knows of it. */
    private record Line(String label, Optional<String> value) {}

    static void section(ReportTexts texts, Figures figures, JobReport report, Markup page) {
        page.open("section").element("h2", texts.label("service"));
        page.element("p", texts.label("service.note"));
        HtmlTable table = new HtmlTable(
                page, texts.label("service.caption"), List.of(texts.label("column.what"), texts.label("column.value")));
        for (Line line : lines(texts, figures, report)) {
            table.row(texts.label("service." + line.label()), line.value().orElse(texts.label("service.open")));
        }
        table.end();
        page.element("p", texts.label("service.scope"));
        page.closeLine();
    }

    private static List<Line> lines(ReportTexts texts, Figures figures, JobReport report) {
        boolean moved = !report.moves().moves().isEmpty();
        return List.of(
                new Line("technician", report.about(About.TECHNICIAN)),
                new Line("certificate", report.about(About.CERTIFICATE)),
                new Line(
                        "date",
                        Optional.of(texts.moment(report.session().header().startedAt()))),
                new Line("place", report.about(About.PLACE)),
                new Line("appliance", report.about(About.APPLIANCE)),
                new Line("refrigerant", answer(texts, report, Slots.REFRIGERANT)),
                new Line("full-charge", answer(texts, report, Slot.of(Quantity.NAMEPLATE_CHARGE))),
                new Line("full-charge-how", answer(texts, report, new Slot("charge-source"))),
                new Line(
                        "added",
                        Optional.of(figures.shown(report.moves().balance().added()))),
                new Line(
                        "recovered",
                        Optional.of(figures.shown(report.moves().balance().recovered()))),
                new Line(
                        "cylinders",
                        moved
                                ? Optional.of(cylinders(report)).filter(text -> !text.isEmpty())
                                : report.about(About.CYLINDER)),
                new Line("reason", reason(texts, report)),
                new Line("parts", answer(texts, report, new Slot("parts"))),
                new Line("leak-test", answer(texts, report, new Slot("leak-test"))),
                new Line("leak-rate", answer(texts, report, new Slot("leak-rate"))),
                new Line("verification", answer(texts, report, new Slot("verification-test"))),
                new Line("destination", answer(texts, report, new Slot("destination"))));
    }

    private static Optional<String> answer(ReportTexts texts, JobReport report, Slot slot) {
        return report.answer(slot).map(content -> texts.content(slot, content));
    }

    /** The verdict before the first movement. */
    private static Optional<String> reason(ReportTexts texts, JobReport report) {
        return report.moves().moves().stream()
                .findFirst()
                .flatMap(first -> report.rounds().stream()
                        .filter(round -> round.event() < first.event())
                        .reduce((earlier, later) -> later)
                        .map(round -> texts.outcome(round.outcome().name())));
    }

    private static String cylinders(JobReport report) {
        return String.join(
                ", ",
                report.moves().balance().byCylinder().keySet().stream()
                        .filter(each -> !each.isEmpty())
                        .toList());
    }
}
