package readback.assistant.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Sums;
import readback.calc.caution.CautionRule;
import readback.calc.name.ConstantName;
import readback.prompts.text.Language;

/**
 * Many sessions as one HTML page in the style of a report. Takes the sessions one by one and keeps a bounded number of
 * rows. One thread.
 */
public final class IndexPage {

    /** Cautions that follow from this unit and what was measured on it, not from the kind of work. */
    private static final Set<CautionRule> SERIOUS = EnumSet.of(
            CautionRule.FLAMMABLE_A3,
            CautionRule.CYLINDER_OVERFILL,
            CautionRule.NEAR_HIGH_PRESSURE_CUT_OUT,
            CautionRule.TEST_PRESSURE_ABOVE_PLATE,
            CautionRule.DISCHARGE_TOO_HOT,
            CautionRule.LIQUID_AT_COMPRESSOR,
            CautionRule.COIL_BELOW_FREEZING);

    private static final List<String> COLUMNS = List.of(
            "column.session",
            "column.started",
            "about.place",
            "about.customer",
            "column.technician",
            "column.appliance",
            "column.refrigerant",
            "verdict",
            "column.doubts",
            "column.serious",
            "net");

    private final ReportTexts texts;
    private final Function<String, Optional<String>> links;
    private final int mostRows;
    private final List<Summary> rows = new ArrayList<>();
    private int leftOut;

    /**
     * A page without sessions yet.
     *
     * @param mostRows further sessions count in the sums only
     * @param links where the report of a session lies, as a reference from this page; empty where there is none
     */
    public IndexPage(Language language, int mostRows, Function<String, Optional<String>> links) {
        this.links = links;
        this.texts = new ReportTexts(language);
        this.mostRows = mostRows;
    }

    /** Adds a session. */
    public void add(Summary summary) {
        if (rows.size() < mostRows) {
            rows.add(summary);
        } else {
            leftOut++;
        }
    }

    /** The page. */
    public String page(SessionFilter choice, Sums sums, Archive.Listing listing, Instant now) {
        Markup page = new Markup();
        ReportPage.begin(page, texts.tag(), texts.label("index.title"), "index");
        page.open("header").element("h1", texts.label("index.title"));
        String words = choice.conditions().isEmpty()
                ? texts.label("index.everything")
                : String.join(
                        ", ", choice.conditions().stream().map(this::condition).toList());
        page.element(
                "p",
                texts.label("made") + " " + texts.moment(now, ZoneId.systemDefault()) + ". "
                        + texts.label("index.choice") + ": " + words + ".",
                "class",
                "quiet");
        page.open("nav").open("p");
        page.element("a", texts.label("index.title"), "href", "#sessions")
                .text(" · ")
                .element("a", texts.label("index.sums"), "href", "#sums");
        page.close().close();
        page.closeLine().open("main");
        troubles(page, listing);
        sessions(page);
        sums(page, sums);
        page.closeLine();
        page.open("footer").element("p", texts.label("advice")).closeLine();
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private void sums(Markup page, Sums sums) {
        page.open("section", "id", "sums").element("h2", texts.label("index.sums"));
        HtmlTable verdicts = new HtmlTable(
                page,
                texts.label("index.by-verdict") + " (" + sums.sessions() + ")",
                List.of(texts.label("verdict"), texts.label("column.count")));
        sums.byVerdict().forEach((kind, count) -> verdicts.row(texts.outcome(kind), String.valueOf(count)));
        verdicts.end();
        amounts(page, "index.by-cylinder", "column.cylinder", sums.byCylinder());
        amounts(page, "index.by-appliance", "column.appliance", sums.byAppliance());
        page.closeLine();
    }

    private String condition(SessionFilter.Condition condition) {
        String value = switch (condition.about()) {
            case VERDICT -> condition.value().equals("none") ? "" : condition.value();
            case CAUTION -> texts.briefCaution(condition.value());
            default -> condition.value();
        };
        String shown = condition.about() == SessionFilter.About.VERDICT ? texts.outcome(value) : value;
        return (texts.label("index.choice." + condition.about().name()) + " " + shown).strip();
    }

    private void amounts(Markup page, String caption, String column, Map<String, Sums.Amount> amounts) {
        if (amounts.isEmpty()) {
            return;
        }
        HtmlTable table = new HtmlTable(
                page,
                texts.label(caption),
                List.of(texts.label(column), texts.label("added"), texts.label("recovered")));
        amounts.entrySet().stream()
                .limit(mostRows)
                .forEach(each -> table.row(
                        each.getKey().isEmpty() ? texts.label("cylinder.unnamed") : each.getKey(),
                        Figures.both(each.getValue().addedKilograms()),
                        Figures.both(each.getValue().recoveredKilograms())));
        table.end();
    }

    private void troubles(Markup page, Archive.Listing listing) {
        if (listing.troubles().isEmpty()) {
            return;
        }
        page.open("section", "class", "trouble").element("h2", texts.label("index.damaged"));
        page.open("ul");
        listing.troubles().stream().limit(mostRows).forEach(each -> page.element("li", each));
        page.close().closeLine();
    }

    private void sessions(Markup page) {
        page.open("section", "id", "sessions").element("h2", texts.label("index.title"));
        if (leftOut > 0) {
            page.element("p", texts.label("index.left-out") + " " + leftOut + ".");
        }
        page.open("table", "class", "cards wide", "role", "table").element("caption", texts.label("index.caption"));
        page.open("thead", "role", "rowgroup").open("tr", "role", "row");
        COLUMNS.forEach(column ->
                page.element("th", texts.label(column), "scope", "col", "role", "columnheader", "class", "long"));
        page.close().closeLine();
        page.open("tbody", "role", "rowgroup");
        rows.forEach(row -> session(page, row));
        page.close().closeLine();
        page.closeLine();
    }

    private void session(Markup page, Summary row) {
        page.open("tr", "role", "row");
        page.open(
                "th", "scope", "row", "role", "rowheader", "data-label", texts.label(COLUMNS.get(0)), "class", "long");
        links.apply(row.session())
                .ifPresentOrElse(
                        link -> page.element("a", row.session(), "href", link), () -> page.text(row.session()));
        page.close();
        List<String> cells = List.of(
                texts.start(row.started(), row.zone()),
                row.place(),
                row.customer(),
                row.technician(),
                row.appliance(),
                row.refrigerant(),
                verdict(row),
                String.valueOf(row.doubts()),
                row.cautions().stream()
                        .filter(IndexPage::serious)
                        .map(texts::briefCaution)
                        .collect(Collectors.joining(", ")),
                row.addedSaid() || row.recoveredSaid()
                        ? Figures.both(row.addedKilograms() - row.recoveredKilograms())
                        : texts.label("not-said"));
        for (int i = 0; i < cells.size(); i++) {
            page.element(
                    "td",
                    cells.get(i),
                    "role",
                    "cell",
                    "data-label",
                    texts.label(COLUMNS.get(i + 1)),
                    "class",
                    cells.get(i).isEmpty() ? "empty" : "long");
        }
        page.closeLine();
    }

    /** The verdict, and whatever keeps it from being the last word. */
    private String verdict(Summary row) {
        List<String> marks = new ArrayList<>();
        if (row.borderline()) {
            marks.add(texts.label("index.borderline"));
        }
        if (!row.closed()) {
            marks.add(texts.label("index.unfinished"));
        }
        if (!row.fault().isEmpty()) {
            marks.add(texts.label("index.damaged.record"));
        }
        return texts.outcome(row.verdict()) + (marks.isEmpty() ? "" : " (" + String.join(", ", marks) + ")");
    }

    /** Not what is read out before every job of its kind. */
    private static boolean serious(String caution) {
        return ConstantName.find(CautionRule.class, caution)
                .filter(SERIOUS::contains)
                .isPresent();
    }
}
