package readback.assistant.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.Entry;
import readback.calc.caution.CautionRule;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;

/**
 * A report as a table: one row for every answer, correction, taken back answer, verdict and caution, in their order.
 */
public final class ReportTable {

    /** The columns and what they hold. */
    public static final Map<String, String> COLUMNS = columns();

    private ReportTable() {}

    private static Map<String, String> columns() {
        Map<String, String> columns = new java.util.LinkedHashMap<>();
        columns.put("session", "name of the session");
        columns.put("event", "number of the event, 1 for the first");
        columns.put("at", "moment, ISO 8601, UTC");
        columns.put("kind", "answer, verdict, outcome, figure or caution");
        columns.put(
                "name",
                "slot of the answer, \"verdict\", name of the caution, what was judged, or that and a figure, as in \"pressure-test.loss\"");
        columns.put("content", "as recorded, as in \"118 psig\"; empty for an answer taken back");
        columns.put("value", "the stated number, empty where the answer is none");
        columns.put("unit", "its unit as it is written, as in \"psig\"");
        columns.put("si_value", "the value in the SI base unit; gauge pressure above the local air");
        columns.put("si_unit", "Pa, K, kg, m, s, m3/s, A, V, W or 1");
        columns.put("superseded", "true when a later row of the same name replaced it");
        return java.util.Collections.unmodifiableMap(columns);
    }

    /** The table with its header line. */
    public static String csv(JobReport report) {
        Csv csv = new Csv(List.copyOf(COLUMNS.keySet()));
        List<JobOutcome> standing = List.of();
        for (Entry entry : report.session().entries()) {
            entry.outcome().changes().forEach(change -> answer(csv, report, entry, change));
            for (CautionRule caution : entry.outcome().cautions()) {
                row(csv, report, entry, "caution", ConstantName.of(caution), "given");
            }
            List<JobOutcome> now = entry.outcome().standing();
            if (!now.isEmpty() && !now.equals(standing)) {
                row(csv, report, entry, "verdict", "verdict", entry.outcome().line());
            }
            for (JobOutcome outcome : now) {
                if (!standing.contains(outcome)) {
                    outcome(csv, report, entry, outcome);
                }
            }
            standing = now;
        }
        return csv.toString();
    }

    /** What a job came to, and the figures that it rests on. */
    private static void outcome(Csv csv, JobReport report, Entry entry, JobOutcome outcome) {
        String judged = ConstantName.of(outcome.judged());
        boolean superseded = report.latestOutcomeEvents().stream().noneMatch(event -> event == entry.number());
        words(begin(csv, report, entry, "outcome", judged, outcome.name()), superseded);
        for (Figure figure : report.figures(entry.number(), outcome)) {
            begin(csv, report, entry, "figure", judged + "." + figure.name(), figure.shown())
                    .number(figure.value().toPlainString())
                    .text(figure.unit())
                    .number(figure.siNumber())
                    .text(figure.siUnit())
                    .text(String.valueOf(superseded))
                    .end();
        }
    }

    private static Csv.Row begin(Csv csv, JobReport report, Entry entry, String kind, String name, String content) {
        return csv.row()
                .text(report.session().header().session())
                .number(String.valueOf(entry.number()))
                .text(entry.event().at().toString())
                .text(kind)
                .text(name)
                .text(content);
    }

    private static void row(Csv csv, JobReport report, Entry entry, String kind, String name, String content) {
        boolean superseded = kind.equals("verdict")
                && report.finalRound()
                        .filter(last -> last.event() != entry.number())
                        .isPresent();
        words(begin(csv, report, entry, kind, name, content), superseded);
    }

    /** Ends a row whose content is no number. */
    private static void words(Csv.Row row, boolean superseded) {
        row.number("")
                .text("")
                .number("")
                .text("")
                .text(String.valueOf(superseded))
                .end();
    }

    private static void answer(Csv csv, JobReport report, Entry entry, Change change) {
        boolean superseded = report.answers().stream()
                .anyMatch(line -> line.slot().equals(change.slot()) && line.event() != entry.number());
        Optional<Reading> reading = change.after().flatMap(Content::reading).map(Reading::inOneUnit);
        begin(csv, report, entry, "answer", change.slot().id(), change.line())
                .number(reading.map(each -> each.value().toPlainString()).orElse(""))
                .text(reading.map(each -> each.unit().symbol()).orElse(""))
                .number(reading.map(each -> plain(each.base())).orElse(""))
                .text(reading.map(each -> Figure.siUnit(each.quantity().dimension()))
                        .orElse(""))
                .text(String.valueOf(superseded))
                .end();
    }

    /** To nine significant digits, more than any instrument has. */
    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new java.math.MathContext(9))
                .stripTrailingZeros()
                .toPlainString();
    }
}
