package readback.assistant.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import readback.assistant.archive.Visits;
import readback.calc.fluid.Refrigerant;
import readback.prompts.text.Language;

/** The history of some equipment as one HTML page in the style of a report. */
public final class HistoryPage {

    private HistoryPage() {}

    /**
     * The page.
     *
     * @param visits each with the visits to one equipment
     * @param count how many visits stand side by side
     * @param catalogue the refrigerant of a designation, if it is known
     */
    public static String of(
            List<Visits> visits,
            int count,
            Function<String, Optional<Refrigerant>> catalogue,
            Language language,
            Instant now) {
        ReportTexts texts = new ReportTexts(language);
        HistoryTexts history = new HistoryTexts(language);
        Markup page = new Markup();
        ReportPage.begin(page, texts.tag(), texts.label("history.title"), "index");
        page.open("header").element("h1", texts.label("history.title"));
        page.element(
                "p", texts.label("made") + " " + texts.moment(now, ZoneId.systemDefault()) + ".", "class", "quiet");
        page.closeLine().open("main");
        for (Visits each : visits) {
            page.open("section").element("h2", each.last().appliance());
            history.followUp(each, now).ifPresent(text -> page.element("p", text, "class", "borderline"));
            page.element("p", history.inAll(each));
            history.leak(each, catalogue.apply(each.refrigerant()), now).forEach(text -> page.element("p", text));
            table(page, texts, history.rows(each, count));
            page.closeLine();
        }
        page.closeLine();
        page.open("footer").element("p", texts.label("advice")).closeLine();
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private static void table(Markup page, ReportTexts texts, List<HistoryTexts.Row> rows) {
        int visits = rows.get(0).values().size();
        List<String> columns = new ArrayList<>(List.of(texts.label("column.what")));
        IntStream.rangeClosed(1, visits).forEach(each -> columns.add(texts.label("history.visit") + " " + each));
        columns.add(texts.label("history.changed"));
        HtmlTable table = new HtmlTable(page, texts.label("history.caption"), columns);
        for (HistoryTexts.Row row : rows) {
            List<String> cells = new ArrayList<>(row.values());
            cells.add(row.changed() ? texts.label("history.changed") : "");
            table.row(row.name(), cells.toArray(String[]::new));
        }
        table.end();
    }
}
