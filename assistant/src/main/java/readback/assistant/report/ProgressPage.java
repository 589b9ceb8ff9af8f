package readback.assistant.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import readback.assistant.drill.Progress;
import readback.assistant.drill.Skill;
import readback.prompts.text.Language;

/** What an apprentice knows by now, as one HTML page in the style of a report; the weakest skills first. */
public final class ProgressPage {

    private final ReportTexts texts;
    private final Language language;

    public ProgressPage(Language language) {
        this.texts = new ReportTexts(language);
        this.language = language;
    }

    /**
     * The page.
     *
     * @param zone in which days begin and end
     */
    public String page(Progress progress, Instant now, ZoneId zone) {
        Markup page = new Markup();
        ReportPage.begin(page, texts.tag(), word("title"));
        page.open("header").element("h1", word("title"));
        page.element("p", word("made") + " " + texts.moment(now, zone) + ".", "class", "quiet");
        page.closeLine().open("main").open("section");
        page.open("ul");
        progress.retention()
                .ifPresent(share -> page.element("li", word("retention") + ": " + Math.round(100 * share) + " %"));
        page.element("li", word("streak") + ": " + progress.daysInARow(LocalDate.ofInstant(now, zone)));
        page.element("li", word("due") + ": " + progress.due(Skill.all(), now).size());
        page.close().closeLine().open("section").element("h2", word("weak"));
        skills(page, progress, now, zone);
        page.closeLine().closeLine();
        page.open("footer").element("p", texts.label("advice")).closeLine();
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private void skills(Markup page, Progress progress, Instant now, ZoneId zone) {
        HtmlTable table = new HtmlTable(
                page,
                word("title"),
                List.of(word("column.skill"), word("column.asked"), word("column.known"), word("column.due")));
        Comparator<Skill> order = Comparator.<Skill, Boolean>comparing(skill -> progress.asked(skill) == 0)
                .thenComparingDouble(skill -> progress.known(skill, now));
        Skill.all().stream()
                .sorted(order)
                .forEach(skill -> table.row(
                        language.label("drill.skill." + skill.id()),
                        String.valueOf(progress.asked(skill)),
                        progress.asked(skill) == 0
                                ? HtmlTable.NOTHING
                                : Math.round(100 * progress.known(skill, now)) + " %",
                        progress.due(skill)
                                .map(at -> LocalDate.ofInstant(at, zone).toString())
                                .orElse(word("never"))));
        table.end();
    }

    private String word(String key) {
        return language.label("drill.page." + key);
    }
}
