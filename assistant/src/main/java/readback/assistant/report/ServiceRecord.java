package readback.assistant.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.About;
import readback.calc.procedure.RefrigerantBalance;
import readback.calc.quantity.Quantity;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/**
 * The record set that the rules for servicing ask for, as far as a session can tell it. What this one does not tell is
 * left blank, to be filled in by hand: an invented or silently missing entry would be worse than a blank line. A leak
 * rate needs the additions of a year, over all sessions of the equipment.
 *
 * <p>Sources: U.S. 40 CFR 82.157(l)(2) (service record), 82.156(a)(3) (disposal), 82.161 (certificate), 84.106 (leak
 * repair from 2026, with its exemption of residential and light commercial cooling), Regulation (EU) 2024/573 articles
 * 4 to 7; all from memory, to be checked against the current text. Record years: 3 in the U.S., 5 in the E.U.
 */
final class ServiceRecord {

    /** The step that asks at the end. */
    private static final Set<Judged> TESTS = EnumSet.of(Judged.PRESSURE_TEST, Judged.EVACUATION);

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
                        Optional.of(texts.moment(
                                report.session().header().startedAt(),
                                report.session().header().shownIn()))),
                new Line("place", report.about(About.PLACE)),
                new Line("appliance", report.about(About.APPLIANCE)),
                new Line("refrigerant", answer(texts, report, Slots.REFRIGERANT)),
                new Line("full-charge", answer(texts, report, Slot.of(Quantity.NAMEPLATE_CHARGE))),
                new Line(
                        "full-charge-how",
                        report.answer(Slot.of(Quantity.NAMEPLATE_CHARGE))
                                .map(any -> texts.label("service.from-plate"))),
                new Line("added", amount(texts, figures, report, RefrigerantBalance.Direction.IN)),
                new Line("recovered", amount(texts, figures, report, RefrigerantBalance.Direction.OUT)),
                new Line(
                        "cylinders",
                        moved
                                ? Optional.of(cylinders(report)).filter(text -> !text.isEmpty())
                                : report.about(About.CYLINDER)),
                new Line("reason", reason(texts, report)),
                new Line(
                        "ports",
                        report.answer(Slots.CAPS_AND_LEAKS)
                                .map(answer -> texts.label("service.ports." + answer.line()))),
                new Line("leak-test", leakTest(texts, report)),
                new Line("work", work(texts, report)),
                new Line("verification", verification(texts, report)),
                new Line("destination", destination(texts, report)));
    }

    /** How much went one way; that nobody said is not the same as none. */
    private static Optional<String> amount(
            ReportTexts texts, Figures figures, JobReport report, RefrigerantBalance.Direction direction) {
        if (!report.moves().said(direction)) {
            return Optional.of(texts.label("not-said"));
        }
        RefrigerantBalance balance = report.moves().balance();
        return Optional.of(
                figures.shown(direction == RefrigerantBalance.Direction.IN ? balance.added() : balance.recovered()));
    }

    private static Optional<String> answer(ReportTexts texts, JobReport report, Slot slot) {
        return report.answer(slot).map(content -> texts.content(slot, content));
    }

    /** The kind of leak test that was made; empty when nobody said. */
    static Optional<String> leakTest(ReportTexts texts, JobReport report) {
        return report.answer(Slots.LEAK_TEST)
                .filter(Content.Option.class::isInstance)
                .map(content -> texts.content(Slots.LEAK_TEST, content));
    }

    /** The parts that were put in and what else was put right, in the order in which they were told. */
    static Optional<String> work(ReportTexts texts, JobReport report) {
        return Optional.of(report.work().stream()
                        .map(told -> texts.content(Slots.WORK_DONE, told.content()))
                        .collect(Collectors.joining(", ")))
                .filter(text -> !text.isEmpty());
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

    /** What was tested in this session besides: pressure and vacuum, with what was measured. */
    private static Optional<String> verification(ReportTexts texts, JobReport report) {
        String tests = report.results().stream()
                .filter(result -> TESTS.contains(result.outcome().judged()))
                .map(texts::measured)
                .collect(Collectors.joining("; "));
        return Optional.of(tests).filter(text -> !text.isEmpty());
    }

    /** Where the technician said, else into the cylinder that the header names; nowhere if nothing was recovered. */
    private static Optional<String> destination(ReportTexts texts, JobReport report) {
        if (!report.moves().said(RefrigerantBalance.Direction.OUT)) {
            return Optional.of(texts.label("not-said"));
        }
        return report.moves().balance().recovered().kilograms() > 0
                ? answer(texts, report, Slots.RECOVERED_TO).or(() -> report.about(About.CYLINDER))
                : Optional.of(texts.label("service.nothing-recovered"));
    }

    private static String cylinders(JobReport report) {
        return String.join(
                ", ",
                report.moves().balance().byCylinder().keySet().stream()
                        .filter(each -> !each.isEmpty())
                        .toList());
    }
}
