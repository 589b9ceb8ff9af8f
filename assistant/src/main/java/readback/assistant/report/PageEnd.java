package readback.assistant.report;

import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/** What pages on one session end with. */
final class PageEnd {

    private PageEnd() {}

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
