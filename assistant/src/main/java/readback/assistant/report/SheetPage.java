package readback.assistant.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.About;
import readback.calc.procedure.RefrigerantBalance.Direction;
import readback.calc.quantity.Mass;
import readback.prompts.text.Language;

/**
 * A session on one sheet of paper for the customer: who did what to which equipment, what it came to and the numbers
 * that it rests on. Everything else stands in the report. The number of its rows and the length of its texts are
 * bounded, so that it prints on one page whatever was said.
 */
public final class SheetPage {

    private static final int LONGEST = 64;
    private static final int LONGEST_NOTE = 160;
    private static final int MOST_FIGURES = 12;
    private static final int MOST_REASONS = 3;
    private static final int MOST_NOTES = 2;

    private final ReportTexts texts;
    private final JobReport report;
    private final Figures figures;
    private final Markup page = new Markup();

    private SheetPage(JobReport report, Language language) {
        this.texts = new ReportTexts(language);
        this.report = report;
        this.figures = new Figures(report.settings().units());
    }

    /**
     * The page.
     *
     * @param now when it is made
     */
    public static String of(JobReport report, Language language, Instant now) {
        return new SheetPage(report, language).whole(now);
    }

    private String whole(Instant now) {
        String title = texts.label("sheet.title");
        PageFrame.begin(page, texts, report, title, "sheet");
        job();
        outcome();
        refrigerant();
        notes();
        PageFrame.signOff(page, texts, who -> bounded(report.about(who).orElse(" "), LONGEST));
        page.closeLine();
        PageFrame.footer(page, texts, report, bounded(report.session().header().session(), LONGEST), now);
        return "<!DOCTYPE html>\n" + page.closeLine().closeLine().finished();
    }

    private void begin(String heading) {
        page.open("section").element("h2", texts.label(heading));
    }

    private void fact(String name, String value) {
        page.open("div")
                .element("dt", name)
                .element("dd", bounded(value, LONGEST))
                .closeLine();
    }

    private void job() {
        begin("job");
        page.open("dl");
        for (String name : List.of(About.CUSTOMER, About.PLACE, About.APPLIANCE, About.TECHNICIAN, About.CERTIFICATE)) {
            fact(texts.label("about." + name), report.about(name).orElse(texts.label("not-said")));
        }
        report.answer(Slots.REFRIGERANT)
                .ifPresent(content -> fact(texts.slot(Slots.REFRIGERANT), texts.content(Slots.REFRIGERANT, content)));
        report.answer(Slots.METERING_DEVICE)
                .ifPresent(content ->
                        fact(texts.slot(Slots.METERING_DEVICE), texts.content(Slots.METERING_DEVICE, content)));
        page.close().closeLine();
    }

    /** The last verdict on the charge and the last of every other test, each with its figures. */
    private void outcome() {
        begin("verdict");
        List<String> names = new ArrayList<>();
        List<Figure> rows = new ArrayList<>();
        report.finalRound().ifPresent(round -> {
            names.add(named(round.outcome()));
            rows.addAll(round.outcome().figures(report.settings().units()));
        });
        report.latestResults().forEach(result -> {
            names.add(named(result.outcome()));
            rows.addAll(result.figures());
        });
        page.element("p", names.isEmpty() ? texts.label("verdict.none") : String.join("; ", names), "class", "outcome");
        if (!rows.isEmpty()) {
            HtmlTable table = new HtmlTable(
                    page,
                    texts.label("sheet.figures"),
                    List.of(texts.label("column.what"), texts.label("column.value"), texts.label("column.si")));
            rows.stream()
                    .limit(MOST_FIGURES)
                    .forEach(figure -> table.row(texts.figure(figure), figure.shown(), figure.siShown()));
            table.end();
        }
        if (!report.reasons().isEmpty()) {
            page.open("ul");
            report.reasons().stream()
                    .limit(MOST_REASONS)
                    .forEach(reason -> page.element("li", bounded(reason, LONGEST_NOTE)));
            page.closeLine();
        }
        page.closeLine();
    }

    private String named(JobOutcome outcome) {
        return texts.outcome(outcome.name())
                + (outcome.borderline() ? " (" + texts.label("index.borderline") + ")" : "");
    }

    private void refrigerant() {
        begin("moves");
        page.open("dl");
        fact(texts.label("added"), amount(Direction.IN, report.moves().balance().added()));
        fact(
                texts.label("recovered"),
                amount(Direction.OUT, report.moves().balance().recovered()));
        ServiceRecord.leakTest(texts, report).ifPresent(test -> fact(texts.label("service.leak-test"), test));
        ServiceRecord.work(texts, report).ifPresent(work -> fact(texts.label("service.work"), work));
        page.close().closeLine();
    }

    private String amount(Direction direction, Mass amount) {
        return report.moves().said(direction) ? figures.shown(amount) : texts.label("not-said");
    }

    private void notes() {
        List<String> notes = report.notes().stream()
                .map(note -> bounded(note.words(), LONGEST_NOTE))
                .toList();
        if (notes.isEmpty()) {
            return;
        }
        begin("sheet.notes");
        page.open("ul");
        notes.stream().limit(MOST_NOTES).forEach(note -> page.element("li", note));
        if (notes.size() > MOST_NOTES) {
            page.element("li", texts.label("sheet.more-notes"));
        }
        page.close().closeLine();
    }

    /** The text, or its beginning where it would take more room than the sheet has for it. */
    private static String bounded(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
        return text.substring(0, end) + " …";
    }
}
