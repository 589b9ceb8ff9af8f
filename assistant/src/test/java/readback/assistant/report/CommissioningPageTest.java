package readback.assistant.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import readback.assistant.recorded.Scripted;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.prompts.text.Language;

/**
 * What a commissioning record tells of a session. Limits of ANSI/ACCA 5 QI-2015 and of the grades from memory, as
 * {@code InstallationGradeTest} has them; those of California RA3.2 as in the tests of calc.
 */
class CommissioningPageTest {

    private static final String CHARGE = "5. Refrigerant charge";
    private static final String AIRFLOW = "3. Airflow over the indoor coil";

    @TempDir
    private Path sessions = Path.of(".");

    /** The rows of the page by their names: every cell after the name. */
    private Map<String, List<String>> rows(Scripted script, Optional<Reading> design) throws Exception {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        String page = CommissioningPage.of(
                ReportPages.report(script, sessions), design, Language.english(), Scripted.START.plusSeconds(86400));
        for (Element row : ReportPages.elements(ReportPages.tree(page), "tr")) {
            NodeList names = row.getElementsByTagName("th");
            NodeList cells = row.getElementsByTagName("td");
            if (cells.getLength() > 0) {
                rows.put(
                        names.item(0).getTextContent(),
                        IntStream.range(0, cells.getLength())
                                .mapToObj(i -> cells.item(i).getTextContent())
                                .toList());
            }
        }
        return rows;
    }

    private Map<String, List<String>> rows(Scripted script) throws Exception {
        return rows(script, Optional.empty());
    }

    private static List<String> row(Map<String, List<String>> rows, String name) {
        return Objects.requireNonNull(rows.get(name), name);
    }

    /**
     * 365 psig is 110 °F and 118 psig 40 °F by a printed R-410A table, to 0.3 °F: with lines of 100 and 52 °F in air of
     * 95 and 76 °F that is 10 and 12 °F, 15 °F over outdoor and 36 °F under return air. 1,200 cfm for 3 tons are 400 a
     * ton.
     */
    @Test
    void a_charge_check_a_weigh_in_and_an_airflow_of_one_session_stand_together() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.newInstallation("all"));

        assertThat(row(rows, CHARGE)).first().isEqualTo("Grade I");
        assertThat(row(rows, "Subcooling")).first().isIn("9.7 °F", "9.8 °F", "9.9 °F", "10.0 °F", "10.1 °F");
        assertThat(row(rows, "Subcooling")).last().isEqualTo("Met. Grade I");
        assertThat(row(rows, "Superheat")).last().isEqualTo("Met");
        assertThat(row(rows, "Charge weighed in"))
                .startsWith("100.0 oz", "2.835 kg")
                .last()
                .isEqualTo("Grade I");
        assertThat(row(rows, "Airflow for the capacity"))
                .startsWith("400 cfm/ton")
                .last()
                .isEqualTo("Met");
        assertThat(row(rows, "External static pressure"))
                .startsWith("0.5 in w.c.", "124.5 Pa")
                .last()
                .isEqualTo("Not judged");
        assertThat(row(rows, "Condensing over outdoor air").get(0)).matches("1[45]\\.\\d °F");
        assertThat(row(rows, "Evaporating under return air").get(0)).matches("3[56]\\.\\d °F");
        assertThat(row(rows, "Condensing over outdoor air")).last().isEqualTo("For information");
    }

    @Test
    void an_airflow_without_a_design_has_no_grade() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.newInstallation("bare"));

        assertThat(row(rows, AIRFLOW))
                .containsExactly(
                        "Not graded", "The airflow was measured, but no design airflow was given to compare it with.");
        assertThat(row(rows, "Design airflow")).first().isEqualTo("NOT IN THIS RECORD");
    }

    /** The measured 1,200 cfm against several designs: 4 % and 20 % too little, a third too little. */
    @ParameterizedTest
    @CsvSource({"1250, Grade I, -4.0", "1500, Grade II, -20.0", "1800, Grade III, -33.3"})
    void an_airflow_is_graded_by_its_design(String design, String grade, String off) throws Exception {
        Map<String, List<String>> rows = rows(
                Scripted.newInstallation("designed"),
                Optional.of(new Reading(Quantity.AIRFLOW, new BigDecimal(design), Unit.CUBIC_FOOT_PER_MINUTE)));

        assertThat(row(rows, AIRFLOW))
                .containsExactly(grade, "The measured airflow lies " + off + " % from the design airflow.");
    }

    /** RA3.2.2.7: an airflow that nobody showed leaves the charge without a valid test. */
    @Test
    void a_charge_is_not_graded_without_an_airflow() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.charging("no-air"));

        assertThat(row(rows, CHARGE)).first().isEqualTo("Not graded");
        assertThat(row(rows, CHARGE).get(1)).contains("airflow was not shown");
        assertThat(row(rows, "Superheat").get(4)).startsWith("Met. Not graded");
    }

    @Test
    void a_charge_that_was_changed_after_its_check_is_not_graded() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.newInstallation("changed")
                .say(300, "refrigerant added four ounces")
                .say(310, "more"));

        assertThat(row(rows, CHARGE))
                .containsExactly("Not graded", "Refrigerant was moved after the last measurement.");
        assertThat(row(rows, "Charge weighed in")).last().isNotEqualTo("Grade I");
    }

    /** 10 °F of subcooling for a plate value of 15 °F: outside 3 °F. */
    @Test
    void a_charge_outside_the_limits_is_of_the_third_grade() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.newInstallation("off")
                .say(290, "correction plate subcooling fifteen")
                .say(300, "no")
                .say(310, "no"));

        assertThat(row(rows, CHARGE)).first().isEqualTo("Grade III");
        assertThat(row(rows, "Subcooling")).last().isEqualTo("Not met. Grade III");
    }

    /** The scale still stands; the check does not, since nobody saw a verdict with the corrected plate value. */
    @Test
    void a_reading_that_changed_after_the_last_verdict_leaves_the_check_without_a_grade() throws Exception {
        Map<String, List<String>> rows =
                rows(Scripted.newInstallation("open").say(290, "correction plate subcooling fifteen"));

        assertThat(row(rows, "Subcooling").get(4)).contains("Not graded: Readings were changed");
        assertThat(row(rows, CHARGE))
                .containsExactly("Grade I", "The charge that was weighed in, against what was to go in.");
    }

    @Test
    void a_weigh_in_alone_is_graded_by_the_scale() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.weighIn("scale"));

        assertThat(row(rows, CHARGE))
                .containsExactly("Grade I", "The charge that was weighed in, against what was to go in.");
        assertThat(row(rows, "Subcooling")).first().isEqualTo("NOT MEASURED");
    }

    @Test
    void what_was_not_measured_says_so_and_nothing_of_it_is_graded() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.session("nothing").say(5, "four ten a"));

        assertThat(rows).hasSizeGreaterThan(30);
        rows.forEach((name, cells) ->
                assertThat(cells.get(0)).as(name).isIn("NOT MEASURED", "NOT IN THIS RECORD", "Not graded"));
        assertThat(rows.toString()).doesNotContain("Met").doesNotContain("[Grade");
    }

    @Test
    void every_field_has_a_criterion_and_its_source() throws Exception {
        rows(Scripted.newInstallation("sources"))
                .forEach((name, cells) -> assertThat(cells)
                        .as(name)
                        .allSatisfy(cell -> assertThat(cell).isNotBlank()));
    }

    /** Criteria are in the units of the session as the values are. */
    @Test
    void a_metric_session_has_a_metric_record() throws Exception {
        Map<String, List<String>> rows = rows(Scripted.valve("metric"));

        assertThat(rows.toString()).doesNotContain("°F");
        assertThat(row(rows, "Outdoor air").get(2)).startsWith("12.8 °C or warmer");
        assertThat(row(rows, "Subcooling").get(2)).startsWith("Within 1.7 K");
    }

    @Test
    void a_pressure_test_and_a_vacuum_stand_with_their_limits() throws Exception {
        assertThat(row(rows(Scripted.pressureTest("nitrogen")), "Standing pressure test, loss"))
                .startsWith("1.0 psi")
                .last()
                .isEqualTo("Met");
        assertThat(row(rows(Scripted.evacuation("vacuum")), "Vacuum at the end of the hold"))
                .startsWith("440 micron")
                .contains("At most 500 micron ten minutes after the pump was isolated, and no longer climbing")
                .last()
                .isEqualTo("Met");
    }
}
