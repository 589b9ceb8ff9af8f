package readback.assistant.report;

import java.util.List;

/** A table of texts with a caption and named columns; the first cell of a row names it. One thread. */
final class Table {

    private final Markup page;

    Table(Markup page, String caption, List<String> columns) {
        this.page = page;
        page.open("table").element("caption", caption);
        page.open("thead").open("tr");
        columns.forEach(column -> page.element("th", column, "scope", "col"));
        page.close().closeLine();
        page.open("tbody");
    }

    Table row(String name, String... cells) {
        page.open("tr").element("th", name, "scope", "row");
        for (String cell : cells) {
            page.element("td", cell);
        }
        page.closeLine();
        return this;
    }

    void end() {
        page.close().closeLine();
    }
}
