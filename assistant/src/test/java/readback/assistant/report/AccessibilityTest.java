package readback.assistant.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Sums;
import readback.assistant.recorded.Scripted;
import readback.prompts.text.Language;

/**
 * The pages in a real browser against the rules of axe-core (WCAG 2.2 A and AA). Needs Chromium on the path and
 * {@code npm ci} in {@code src/test/accessibility}; where either is missing the check is skipped and says why, and the
 * checks in {@link ReportPageTest} stand alone. In continuous integration ({@code CI=true}) it fails instead.
 */
class AccessibilityTest {

    private static final Path AXE = Path.of("src/test/accessibility/node_modules/axe-core/axe.min.js");

    private static final String RUN = """
            axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
              .then(function (found) {
                var out = document.createElement('pre');
                out.id = 'axe-result';
                out.textContent = JSON.stringify({passes: found.passes.length, violations: found.violations.map(
                  function (each) { return each.id + ': ' + each.nodes.map(function (n) { return n.html; }).join(' | '); })});
                document.body.appendChild(out);
              });
            """;

    @Tag("slow")
    @Test
    void the_pages_break_no_rule_of_accessibility(@TempDir Path folder) throws Exception {
        Optional<Path> browser = browser();
        skipUnless(browser.isPresent(), "accessibility in the browser needs Chromium on the path");
        skipUnless(Files.exists(AXE), "accessibility in the browser needs axe-core: npm ci in src/test/accessibility");
        Path sessions = Files.createDirectory(folder.resolve("sessions"));
        String report = ReportPages.page(ReportPages.report(Scripted.charging("call"), sessions));
        IndexPage index = new IndexPage(Language.english(), 10);
        Sums sums = new Sums();
        Archive.Listing listing = Archive.in(sessions).each(summary -> {
            index.add(summary);
            sums.add(summary);
        });
        for (String page : List.of(report, index.page(SessionFilter.ALL, sums, listing, Scripted.START))) {
            JsonNode result = checked(page, folder, browser.orElseThrow());
            assertThat(result.path("passes").asInt()).as("rules that applied").isGreaterThan(10);
            assertThat(result.path("violations")).isEmpty();
        }
    }

    /** Where the machine is set up by the project's own script, a missing tool is a fault and no reason to skip. */
    private static void skipUnless(boolean there, String why) {
        if (there) {
            return;
        }
        assertThat(System.getenv("CI")).as(why).isNotEqualTo("true");
        System.out.println("skipped: " + why);
        abort(why);
    }

    private static JsonNode checked(String page, Path folder, Path browser) throws Exception {
        String open = page.replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "");
        Path file = folder.resolve("page.html");
        Files.writeString(
                file,
                open.replace(
                        "</body>",
                        "<script>" + Files.readString(AXE) + "</script><script>" + RUN + "</script></body>"));
        Process process = new ProcessBuilder(
                        browser.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("browser"),
                        "--virtual-time-budget=30000",
                        "--dump-dom",
                        file.toUri().toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String dom = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.onExit().join();
        int from = dom.indexOf("<pre id=\"axe-result\">");
        assertThat(from).as("the browser's answer").isPositive();
        String json = dom.substring(from + "<pre id=\"axe-result\">".length(), dom.indexOf("</pre>", from));
        return new ObjectMapper()
                .readTree(json.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"));
    }

    private static Optional<Path> browser() {
        String path = System.getenv().getOrDefault("PATH", "");
        return Stream.of(path.split(java.io.File.pathSeparator, -1))
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Contrast of text by the formula of WCAG 2.2, 1.4.3, for every pair of colours that the style uses for text. */
    @Test
    void text_stands_out_from_its_ground() throws IOException {
        assertThat(contrast(0x444444, 0xffffff)).isGreaterThan(7);
        assertThat(contrast(0x111111, 0xf2f2f2)).isGreaterThan(7);
        assertThat(contrast(0x8a0000, 0xffffff)).isGreaterThan(7);
        String css = Files.readString(Path.of("src/main/resources/readback/assistant/report/report.css"));
        assertThat(css.lines().filter(line -> line.matches(".*[ {]color:.*")).toList())
                .allSatisfy(line -> assertThat(line).containsPattern("[ {]color: #(111|444|8a0000|0b3d91)"));
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
        IndexPage index = new IndexPage(Language.english(), 1);
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
