package readback.assistant.report;

import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import readback.assistant.record.About;
import readback.assistant.record.Header;

/** What pages on one session begin and end with. */
final class PageFrame {

    private PageFrame() {}

    /** Title and date, and a word where the record is to be looked at; opens the main part. */
    static void begin(Markup page, ReportTexts texts, JobReport report, String title, String style) {
        Header header = report.session().header();
        ReportPage.begin(page, texts.tag(), title + " " + header.session(), style);
        page.open("header").element("h1", title);
        page.element(
                "p",
                texts.label("started") + " " + texts.moment(header.startedAt(), header.shownIn()),
                "class",
                "quiet");
        page.closeLine().open("main");
        if (!report.verification().identical() || !report.session().closed()) {
            page.element("p", texts.label("sheet.trouble"), "class", "borderline");
        }
    }

    /** Where technician and customer sign; the name is printed above the label, a space for nothing. */
    static void signOff(Markup page, ReportTexts texts, Function<String, String> name) {
        page.open("section", "class", "signatures").element("h2", texts.label("signatures"));
        signatures(page, texts, List.of(About.TECHNICIAN, About.CUSTOMER), name);
        page.closeLine();
    }

    /**
     * A line to sign on for each.
     *
     * @param who as the job's header names them
     * @param name what is printed above the label; a space for nothing
     */
    static void signatures(Markup page, ReportTexts texts, List<String> who, Function<String, String> name) {
        page.open("div", "class", "lines");
        for (String each : who) {
            page.open("p", "class", "signature")
                    .element("span", name.apply(each), "class", "name")
                    .element("span", texts.label("signature." + each), "class", "quiet")
                    .closeLine();
        }
        page.close();
    }

    /** Who decides, and which record the page stands for. */
    static void footer(Markup page, ReportTexts texts, JobReport report, String session, Instant now) {
        page.open("footer");
        page.element("p", texts.label("advice"));
        page.element(
                "p",
                texts.label("session") + " " + session + ". " + texts.label("hash") + ": "
                        + report.session().hash() + ". " + texts.label("made") + " "
                        + texts.moment(now, report.session().header().shownIn()) + ".",
                "class",
                "quiet hash");
        page.closeLine();
    }
}
