package readback.assistant.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Sums;
import readback.prompts.text.Language;

/**
 * Many sessions as one HTML page in the style of a report. Takes the sessions one by one and keeps a bounded number of
 * rows. One thread.
 */
public final class IndexPage {

    private final ReportTexts texts;
    private final int mostRows;
    private final List<Summary> rows = new ArrayList<>();
    private int leftOut;

    /** @param mostRows further sessions count in the sums only */
    public IndexPage(Language language, int mostRows) {
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
        ReportPage.begin(page, texts.tag(), texts.label("index.title"));
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
        page.closeLine().open("main");
        sums(page, sums);
        troubles(page, listing);
        sessions(page);
        page.closeLine();
        page.open("footer").element("p", texts.label("advice")).closeLine();
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private void sums(Markup page, Sums sums) {
        page.open("section").element("h2", texts.label("index.sums"));
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
                List.of(texts.label(column), texts.label("added") + ", kg", texts.label("recovered") + ", kg"));
        amounts.entrySet().stream()
                .limit(mostRows)
                .forEach(each -> table.row(
                        each.getKey().isEmpty() ? texts.label("cylinder.unnamed") : each.getKey(),
                        Figures.rounded(each.getValue().addedKilograms(), 3),
                        Figures.rounded(each.getValue().recoveredKilograms(), 3)));
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
        page.open("section").element("h2", texts.label("index.title"));
        if (leftOut > 0) {
            page.element("p", texts.label("index.left-out") + " " + leftOut + ".");
        }
        HtmlTable table = new HtmlTable(
                page,
                texts.label("index.caption"),
                List.of(
                        texts.label("column.session"),
                        texts.label("column.started"),
                        texts.label("column.technician"),
                        texts.label("column.appliance"),
                        texts.label("column.refrigerant"),
                        texts.label("verdict"),
                        texts.label("column.doubts"),
                        texts.label("column.cautions"),
                        texts.label("net") + ", kg"));
        for (Summary row : rows) {
            table.row(
                    row.session(),
                    texts.moment(row.started(), row.zone()),
                    row.technician(),
                    row.appliance(),
                    row.refrigerant(),
                    texts.outcome(row.verdict())
                            + (row.fault().isEmpty() ? "" : " (" + texts.label("index.damaged.record") + ")"),
                    String.valueOf(row.doubts()),
                    String.join(
                            ", ",
                            row.cautions().stream().map(texts::briefCaution).toList()),
                    row.addedSaid() || row.recoveredSaid()
                            ? Figures.rounded(row.addedKilograms() - row.recoveredKilograms(), 3)
                            : texts.label("not-said"));
        }
        table.end();
        page.closeLine();
    }
}
