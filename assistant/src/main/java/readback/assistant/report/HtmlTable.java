package readback.assistant.report;

import java.util.List;

/** A table of texts with a caption and named columns; the first cell of a row names it. One thread. */
final class HtmlTable {

    private static final int LONGEST_UNBROKEN = 12;

    private final Markup page;

    HtmlTable(Markup page, String caption, List<String> columns) {
        this.page = page;
        page.open("table").element("caption", caption);
        page.open("thead").open("tr");
        columns.forEach(column -> page.element("th", column, "scope", "col", "class", width(column)));
        page.close().closeLine();
        page.open("tbody");
    }

    HtmlTable row(String name, String... cells) {
        page.open("tr").element("th", name, "scope", "row", "class", width(name));
        for (String cell : cells) {
            page.element("td", cell, "class", width(cell));
        }
        page.closeLine();
        return this;
    }

    /** Short cells are never broken; others may be, anywhere if a word is too long. */
    private static String width(String cell) {
        return cell.length() <= LONGEST_UNBROKEN ? "short" : "long";
    }

    void end() {
        page.close().closeLine();
    }
}
