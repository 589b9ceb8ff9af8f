package readback.assistant.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import readback.assistant.record.About;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.recorded.Scripted;
import readback.prompts.text.Language;

/** The report as a page. */
class ReportPageTest {

    /** Everything a page is made of; nothing that runs, loads or submits is among it. */
    private static final Set<String> ELEMENTS = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "body",
            "header",
            "main",
            "footer",
            "section",
            "h1",
            "h2",
            "p",
            "dl",
            "div",
            "dt",
            "dd",
            "table",
            "caption",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "ul",
            "li",
            "blockquote",
            "figure",
            "figcaption",
            "span",
            "svg",
            "desc",
            "defs",
            "pattern",
            "rect",
            "path",
            "text");

    private static final Set<String> ATTRIBUTES = Set.of(
            "lang",
            "charset",
            "http-equiv",
            "content",
            "name",
            "class",
            "scope",
            "id",
            "role",
            "aria-labelledby",
            "viewBox",
            "width",
            "height",
            "patternUnits",
            "patternTransform",
            "transform",
            "d",
            "x",
            "y",
            "style",
            "text-anchor",
            "data-label",
            "data-point");

    @Test
    void tells_the_whole_job_in_order(@TempDir Path sessions) throws Exception {
        Scripted script = Scripted.charging("call").about(About.TECHNICIAN, "K. Example");
        Document page = ReportPages.tree(ReportPages.page(ReportPages.report(script, sessions)));
        assertThat(ReportPages.texts(page, "h2"))
                .containsExactly(
                        "Verdict",
                        "Job and equipment",
                        "Conditions and readings",
                        "Method, target and why",
                        "Course of the check",
                        "Pressure and enthalpy",
                        "Cautions",
                        "Refrigerant in and out",
                        "Doubts",
                        "Notes and remarks",
                        "Service record",
                        "Signatures",
                        "Record",
                        "Conversation");
        assertThat(ReportPages.texts(page, "dd")).contains("K. Example", "R-410A, A1", "Piston", "12.0 oz (0.75 lb)");
        assertThat(ReportPages.texts(page, "td"))
                .contains("118 psig (02:50), 126 psig (27:40)", "+8 oz", "understood at 00:30");
        assertThat(ReportPages.texts(page, "li"))
                .anySatisfy(note -> assertThat(note).endsWith("coil and filter are clean"));
    }

    @Test
    void tells_how_good_the_instruments_were_and_on_whose_word(@TempDir Path sessions) throws Exception {
        Scripted script = Scripted.pistonReadings("call").say(300, "gauges are good to one percent");
        Document page = ReportPages.tree(ReportPages.page(ReportPages.report(script, sessions)));
        assertThat(ReportPages.texts(page, "dd"))
                .contains("±1 % of the reading, as the technician stated")
                .contains("±1.8 °F, taken for ordinary: the worst that California RA3.2 admits");
    }

    @Test
    void says_first_when_the_record_cannot_be_trusted(@TempDir Path sessions) throws Exception {
        RecordedSession honest = Scripted.pistonReadings("call").readFrom(sessions);
        RecordedSession damaged = Scripted.damagedAfter(5, honest);
        Document page = ReportPages.tree(ReportPages.page(ReportPages.report(damaged)));
        assertThat(ReportPages.texts(page, "h2").get(0)).isEqualTo("Read this first");
        assertThat(ReportPages.texts(page, "p"))
                .contains("The record does not hold from here on: line 7 was changed or damaged.")
                .contains("The session was not brought to its end.");
    }

    @Test
    void hostile_text_in_every_field_is_inert(@TempDir Path sessions) throws Exception {
        String hostile = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&lt;\u0000\u001b\u202e\ud800]]>-->";
        Scripted script =
                Scripted.pistonReadings("call").say(300, "note " + hostile).say(310, hostile);
        About.ALL.forEach(name -> script.about(name, hostile));
        RecordedSession session = script.readFrom(sessions);
        RemarkFile.add(session, Scripted.START, hostile, hostile);
        String text = ReportPages.page(ReportPages.report(session));
        Document page = ReportPages.tree(text);
        assertThat(names(page)).isSubsetOf(ELEMENTS);
        assertThat(attributes(page)).isSubsetOf(ATTRIBUTES);
        assertThat(ReportPages.texts(page, "dd"))
                .anySatisfy(shown -> assertThat(shown)
                        .startsWith(
                                "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&lt;\u2400\u241b[U+202e]"));
        assertThat(text.chars()).allMatch(c -> c == '\n' || c >= ' ');
        assertThat(ReportPages.texts(page, "blockquote")).hasSize(1);
    }

    @Test
    void names_of_a_megabyte_are_cut_and_said_to_be(@TempDir Path sessions) throws Exception {
        String name = "x".repeat(1 << 20);
        Scripted script = Scripted.pistonReadings("call");
        About.ALL.forEach(each -> script.about(each, name));
        String page = ReportPages.page(ReportPages.report(script, sessions));
        assertThat(page.length()).isLessThan(200_000);
        assertThat(page).contains("the record holds all 1048576 characters");
    }

    @Test
    void loads_nothing_from_anywhere(@TempDir Path sessions) throws Exception {
        String page = ReportPages.page(ReportPages.report(Scripted.charging("call"), sessions));
        assertThat(page)
                .doesNotContainIgnoringCase("http:")
                .doesNotContainIgnoringCase("https:")
                .doesNotContain(" src=")
                .doesNotContain(" href=")
                .doesNotContain("@import")
                .doesNotContain("<script");
        assertThat(List.of(page.split("url\\(", -1)).subList(1, page.split("url\\(", -1).length))
                .allSatisfy(part -> assertThat(part).startsWith("#"));
        assertThat(page).contains("Content-Security-Policy", "default-src &#39;none&#39;");
    }

    @Test
    void can_be_understood_without_seeing_it(@TempDir Path sessions) throws Exception {
        Document page = ReportPages.tree(ReportPages.page(ReportPages.report(Scripted.charging("call"), sessions)));
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(ReportPages.texts(page, "h1")).hasSize(1);
        Set<String> ids = new HashSet<>();
        for (String name : names(page)) {
            for (Element element : ReportPages.elements(page, name)) {
                if (element.hasAttribute("id")) {
                    assertThat(ids.add(element.getAttribute("id")))
                            .as("id " + element.getAttribute("id") + " is unique")
                            .isTrue();
                }
            }
        }
        assertThat(ReportPages.elements(page, "svg")).hasSize(3).allSatisfy(drawing -> {
            assertThat(drawing.getAttribute("role")).isEqualTo("img");
            for (String id : drawing.getAttribute("aria-labelledby").split(" ", -1)) {
                assertThat(ids).contains(id);
            }
            assertThat(drawing.getElementsByTagName("desc").item(0).getTextContent())
                    .isNotBlank();
        });
        assertThat(ReportPages.elements(page, "th"))
                .allSatisfy(cell -> assertThat(cell.getAttribute("scope")).isIn("col", "row"));
        assertThat(ReportPages.elements(page, "table"))
                .allSatisfy(table -> assertThat(
                                table.getElementsByTagName("caption").getLength())
                        .isEqualTo(1));
    }

    @Test
    void every_text_of_the_report_is_used_or_names_a_slot_or_content() {
        List<String> sources = new java.util.ArrayList<>(Sources.of("report"));
        sources.addAll(Sources.of("replay"));
        sources.addAll(Sources.of("command"));
        assertThat(Language.english().texts().keySet().stream()
                        .filter(key -> key.startsWith("report."))
                        .map(key -> key.substring("report.".length())))
                .filteredOn(key -> !key.startsWith("slot.") && !key.startsWith("content."))
                .filteredOn(key -> sources.stream().noneMatch(source -> mentions(source, key)))
                .isEmpty();
    }

    private static boolean mentions(String source, String key) {
        int dot = key.lastIndexOf('.');
        boolean whole = (source.contains('"' + key + '"') || source.contains("\"report." + key + '"'));
        boolean prefixed = dot > 0
                && (source.contains('"' + key.substring(0, dot + 1) + '"')
                        || source.contains("\"report." + key.substring(0, dot + 1) + '"'));
        return whole || prefixed;
    }

    private static Set<String> names(Document page) {
        Set<String> names = new TreeSet<>();
        ReportPages.elements(page, "*").forEach(element -> names.add(element.getTagName()));
        return names;
    }

    private static Set<String> attributes(Document page) {
        Set<String> names = new TreeSet<>();
        ReportPages.elements(page, "*").forEach(element -> {
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                names.add(element.getAttributes().item(i).getNodeName());
            }
        });
        return names;
    }
}
