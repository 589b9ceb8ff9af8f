package readback.assistant.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Sums;
import readback.assistant.drill.Progress;
import readback.assistant.record.About;
import readback.assistant.recorded.Scripted;
import readback.prompts.text.Language;
import readback.rules.Browser;

/**
 * The pages in a real browser ({@link Browser}); where there is none the checks in {@link ReportPageTest} stand alone.
 */
class AccessibilityTest {

    @Tag("slow")
    @Test
    void the_pages_break_no_rule_of_accessibility(@TempDir Path folder) throws Exception {
        Browser browser = Browser.in(folder);
        Path sessions = Files.createDirectory(folder.resolve("sessions"));
        JobReport report = ReportPages.report(Scripted.charging("call"), sessions);
        JobReport vacuum = ReportPages.report(Scripted.evacuation("vacuum"), sessions);
        JobReport valve = ReportPages.report(Scripted.valve("valve"), sessions);
        JobReport installation = ReportPages.report(Scripted.newInstallation("installation"), sessions);
        IndexPage index = new IndexPage(Language.english(), 10, session -> Optional.of(session + ".html"));
        Sums sums = new Sums();
        Archive.Listing listing = Archive.in(sessions).each(summary -> {
            index.add(summary);
            sums.add(summary);
        });
        for (String page : List.of(
                ReportPages.page(report),
                ReportPages.page(vacuum),
                ReportPages.page(valve),
                SheetPage.of(report, Language.english(), Scripted.START),
                CommissioningPage.of(installation, Optional.empty(), Language.english(), Scripted.START),
                index.page(SessionFilter.ALL, sums, listing, Scripted.START),
                new ProgressPage(Language.english())
                        .page(Progress.of(List.of(), ZoneOffset.UTC), Scripted.START, ZoneOffset.UTC))) {
            browser.breaksNoRule(page);
        }
    }

    /** However much was said, the customer's sheet is one page on paper, of A4 or of letter size. */
    @Tag("slow")
    @Test
    void the_sheet_prints_on_exactly_one_page(@TempDir Path folder) throws Exception {
        Browser browser = Browser.in(folder);
        String endless = "a very long text that goes on and on ".repeat(40);
        Scripted wordy = Scripted.charging("wordy");
        About.ALL.forEach(name -> wordy.about(name, endless));
        for (int i = 0; i < 9; i++) {
            wordy.say(2720 + i, "note " + endless);
        }
        Path sessions = Files.createDirectory(folder.resolve("sessions"));
        for (Scripted script : List.of(
                Scripted.session("nothing").say(5, "four ten a"),
                Scripted.charging("charging"),
                Scripted.weighIn("weighed"),
                wordy)) {
            String page = SheetPage.of(ReportPages.report(script, sessions), Language.english(), Scripted.START);
            for (String size : List.of("A4", "letter")) {
                Path file = folder.resolve("sheet.html");
                Files.writeString(file, page.replace("<style>\n", "<style>\n@page { size: " + size + "; }\n"));
                Path pdf = folder.resolve("sheet.pdf");
                browser.run(
                        "--no-pdf-header-footer",
                        "--print-to-pdf=" + pdf,
                        file.toUri().toString());
                String printed = Files.readString(pdf, StandardCharsets.ISO_8859_1);
                assertThat(Pattern.compile("/Type\\s*/Page\\b")
                                .matcher(printed)
                                .results()
                                .count())
                        .as(script.header().session() + " on " + size)
                        .isEqualTo(1);
            }
        }
    }

    /**
     * Contrast of text by the formula of WCAG 2.2, 1.4.6, for every colour that the style uses for text on both of its
     * grounds, in daylight and in the dark.
     */
    @Test
    void text_stands_out_from_its_ground() throws IOException {
        String css = Files.readString(Path.of("src/main/resources/readback/assistant/report/report.css"));
        assertThat(css.lines()
                        .filter(line -> line.matches(".*[ {](color|fill): .*"))
                        .toList())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line)
                        .containsPattern("[ {](color|fill): (var\\(--(ink|quiet|alarm|link|paper|shade)\\)|none)"));
        List<Map<String, Integer>> schemes = schemes(css);
        assertThat(schemes).hasSize(2);
        for (Map<String, Integer> colours : schemes) {
            for (String text : List.of("ink", "quiet", "alarm", "link")) {
                for (String ground : List.of("paper", "shade")) {
                    assertThat(contrast(colour(colours, text), colour(colours, ground)))
                            .as(text + " on " + ground + " of " + colours)
                            .isGreaterThan(7);
                }
            }
        }
    }

    private static int colour(Map<String, Integer> colours, String name) {
        return Objects.requireNonNull(colours.get(name), name);
    }

    /** The colours by name, of each block that sets the paper. */
    private static List<Map<String, Integer>> schemes(String css) {
        List<Map<String, Integer>> schemes = new ArrayList<>();
        Matcher block = Pattern.compile(":root \\{([^}]*)}").matcher(css);
        while (block.find()) {
            Map<String, Integer> colours = new HashMap<>();
            Matcher colour = Pattern.compile("--([a-z]+): #([0-9a-f]{3,6});").matcher(block.group(1));
            while (colour.find()) {
                String digits = colour.group(2);
                String six = digits.length() == 6 ? digits : digits.replaceAll("(.)", "$1$1");
                colours.put(colour.group(1), Integer.parseInt(six, 16));
            }
            schemes.add(colours);
        }
        return schemes;
    }

    private static double contrast(int text, int ground) {
        double a = luminance(text);
        double b = luminance(ground);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(int colour) {
        return 0.2126 * linear(colour >> 16 & 0xff)
                + 0.7152 * linear(colour >> 8 & 0xff)
                + 0.0722 * linear(colour & 0xff);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void the_index_page_is_well_formed_and_has_its_sums(@TempDir Path sessions) throws Exception {
        Scripted.charging("one").about("cylinder", "C-17").in(sessions);
        Scripted.valve("two").in(sessions);
        IndexPage index = new IndexPage(Language.english(), 1, session -> Optional.empty());
        Sums sums = new Sums();
        Archive.Listing listing = Archive.in(sessions).each(summary -> {
            index.add(summary);
            sums.add(summary);
        });
        Document page = ReportPages.tree(index.page(SessionFilter.ALL, sums, listing, Scripted.START));
        assertThat(ReportPages.texts(page, "caption"))
                .contains("Refrigerant by cylinder", "Sessions by verdict (2)", "Sessions, oldest first");
        assertThat(ReportPages.texts(page, "p"))
                .anySatisfy(text -> assertThat(text).endsWith("Rows left out: 1."));
        assertThat(ReportPages.elements(page, "th"))
                .extracting(Element::getTextContent)
                .contains("C-17");
    }
}
