package readback.assistant.report;

import java.util.List;

/**
 * A table of texts with a caption and named columns; the first cell of a row names it. On a narrow screen each row is a
 * card whose cells name their columns; the roles keep it a table for those who hear it. One thread.
 */
final class HtmlTable {

    /** Stands in a cell that has nothing to tell; a card leaves it out. */
    static final String NOTHING = "–";

    private static final int LONGEST_UNBROKEN = 12;

    private final Markup page;
    private final List<String> columns;

    HtmlTable(Markup page, String caption, List<String> columns) {
        this.page = page;
        this.columns = List.copyOf(columns);
        page.open("table", "class", "cards", "role", "table").element("caption", caption);
        page.open("thead", "role", "rowgroup").open("tr", "role", "row");
        columns.forEach(
                column -> page.element("th", column, "scope", "col", "role", "columnheader", "class", width(column)));
        page.close().closeLine();
        page.open("tbody", "role", "rowgroup");
    }

    HtmlTable row(String name, String... cells) {
        return row("told", name, cells);
    }

    /** A row that says that something is missing; it looks so too. */
    HtmlTable missing(String name, String... cells) {
        return row("missing", name, cells);
    }

    private HtmlTable row(String kind, String name, String... cells) {
        page.open("tr", "role", "row", "class", kind)
                .element(
                        "th",
                        name,
                        "scope",
                        "row",
                        "role",
                        "rowheader",
                        "data-label",
                        columns.get(0),
                        "class",
                        width(name));
        for (int i = 0; i < cells.length; i++) {
            page.element("td", cells[i], "role", "cell", "data-label", columns.get(i + 1), "class", width(cells[i]));
        }
        page.closeLine();
        return this;
    }

    /** Short cells are never broken; others may be, anywhere if a word is too long. */
    private static String width(String cell) {
        if (cell.equals(NOTHING)) {
            return "short empty";
        }
        return cell.length() <= LONGEST_UNBROKEN ? "short" : "long";
    }

    void end() {
        page.close().closeLine();
    }
}
