package readback.assistant.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import readback.prompts.text.Language;

/** Tables that were worked out elsewhere as one HTML page in the style of a report, with a list of them at its head. */
public final class TablesPage {

    private TablesPage() {}

    /**
     * A table.
     *
     * @param name names its place in the page, in letters and hyphens
     * @param about what counts in it, in a sentence or two
     * @param rows cells as they are shown, as many as there are columns; the first names the row
     */
    public record Table(String name, String heading, String about, List<String> columns, List<List<String>> rows) {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * The page.
     *
     * @param lead what holds for all tables, a paragraph each
     * @param nothing stands in place of a table without rows
     * @param now when the page is made
     */
    public static String of(
            Language language, String title, List<String> lead, List<Table> tables, String nothing, Instant now) {
        ReportTexts texts = new ReportTexts(language);
        Markup page = new Markup();
        ReportPage.begin(page, texts.tag(), title, "index");
        page.open("header").element("h1", title);
        page.element(
                "p", texts.label("made") + " " + texts.moment(now, ZoneId.systemDefault()) + ".", "class", "quiet");
        page.open("nav").open("ul");
        for (Table table : tables) {
            page.open("li")
                    .element("a", table.heading(), "href", "#" + table.name())
                    .close();
        }
        page.close().close();
        page.closeLine().open("main");
        lead.forEach(paragraph -> page.element("p", paragraph));
        tables.forEach(table -> section(page, table, nothing));
        page.closeLine();
        page.open("footer").element("p", texts.label("advice")).closeLine();
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private static void section(Markup page, Table table, String nothing) {
        page.open("section", "id", table.name()).element("h2", table.heading());
        if (table.rows().isEmpty()) {
            page.element("p", table.about()).element("p", nothing, "class", "quiet");
        } else {
            HtmlTable cells = new HtmlTable(page, table.about(), table.columns());
            table.rows()
                    .forEach(row ->
                            cells.row(row.get(0), row.subList(1, row.size()).toArray(String[]::new)));
            cells.end();
        }
        page.closeLine();
    }
}
