package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.archive.Archive;
import readback.assistant.archive.Equipment;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Visits;
import readback.assistant.record.About;
import readback.assistant.recorded.Scripted;
import readback.assistant.report.HistoryTexts;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.prompts.text.Language;

/** What the office sees of one unit over its visits. */
class HistoryTest {

    private static final HistoryTexts TEXTS = new HistoryTexts(Language.english());

    @TempDir
    private Path folder;

    private Visits visits() throws Exception {
        List<Summary> all = new ArrayList<>();
        Archive.in(folder).each(all::add);
        return Visits.of(all).get(0);
    }

    private static Optional<Refrigerant> refrigerant(Visits visits) {
        return Catalogue.standard().find(visits.refrigerant()).known();
    }

    @Test
    void a_serial_number_is_one_however_it_is_written() {
        for (String name : List.of(
                "SN 4471", "sn-4471", "S/N: 4471", "Outdoor unit 7, serial no. 4471", "serial number 4471", "4471")) {
            assertThat(Equipment.key(name)).as(name).isEqualTo("4471");
        }
        assertThat(Equipment.key("SN 44-71 A")).isEqualTo("4471");
        assertThat(Equipment.key("Unit 7")).isEqualTo(Equipment.key("unit  7")).isEqualTo("unit7");
        assertThat(Equipment.key("Snow hall")).isEqualTo("snowhall");
        assertThat(Equipment.key("")).isEmpty();
    }

    @Test
    void the_visits_to_a_unit_stand_side_by_side_with_what_changed() throws Exception {
        Scripted.valve("2026-a").about(About.APPLIANCE, "SN 4471").in(folder);
        Scripted.charging("2026-b")
                .about(About.APPLIANCE, "Unit 7, sn-4471")
                .about(About.TECHNICIAN, "Ines Ardent")
                .in(folder);
        Scripted.valve("2026-c").about(About.APPLIANCE, "SN 9").in(folder);

        Ran ran = Ran.of("", "history", folder.toString(), "--appliance", "sn 4471");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("Unit 7, sn-4471")
                .contains("2 sessions; added in all 0.340 kg (0.75 lb), recovered 0.000 kg")
                .containsPattern("\\* Verdict +Charge low +Charge right")
                .containsPattern("\\* Technician +Ines Ardent")
                .containsPattern("  Refrigerant +R-410A +R-410A")
                .doesNotContain("2026-c");
    }

    /** 12 oz of 10 lb are 7.5 %; 16 oz a pound. */
    @Test
    void the_leak_rate_is_what_was_added_in_a_year_of_the_full_charge() throws Exception {
        Scripted.charging("one").about(About.APPLIANCE, "SN 1").in(folder);
        Visits visits = visits();

        assertThat(TEXTS.leak(visits, refrigerant(visits), Scripted.START.plus(Duration.ofDays(1))))
                .satisfiesExactly(
                        rate -> assertThat(rate).contains("a leak rate of 7.5 %"),
                        rule -> assertThat(rule)
                                .contains("40 CFR 84.106 does not count it: it begins at 15 lb")
                                .contains("residential and light commercial air conditioning is exempt"));
        assertThat(visits.addedInAYearTo(Scripted.START.plus(Duration.ofDays(364))))
                .isCloseTo(0.340194, within(1e-6));
        assertThat(visits.addedInAYearTo(Scripted.START.plus(Duration.ofDays(365))))
                .isZero();
    }

    @Test
    void a_system_that_was_filled_anew_did_not_leak_that() throws Exception {
        Scripted.weighIn("one").about(About.APPLIANCE, "SN 1").in(folder);
        Visits visits = visits();

        assertThat(visits.last().addedKilograms()).isCloseTo(2.835, within(1e-3));
        assertThat(visits.addedInAYearTo(Scripted.START.plus(Duration.ofDays(1))))
                .isZero();
    }

    @Test
    void without_a_full_charge_there_is_no_rate() throws Exception {
        Scripted.session("one")
                .about(About.APPLIANCE, "SN 1")
                .say(5, "four ten a")
                .in(folder);
        Visits visits = visits();

        assertThat(TEXTS.leak(visits, refrigerant(visits), Scripted.START))
                .containsExactly("No leak rate: nobody read the full charge.");
    }

    @Test
    void a_charge_that_was_left_low_is_overdue_after_a_month_until_it_is_measured_again() throws Exception {
        Scripted.valve("2026-a").about(About.APPLIANCE, "SN 1").in(folder);

        Instant start = Scripted.START;
        assertThat(TEXTS.followUp(visits(), start.plus(Duration.ofDays(30))))
                .hasValueSatisfying(text -> assertThat(text).startsWith("Charge low, not measured again, 30 days ago"));
        assertThat(TEXTS.followUp(visits(), start.plus(Duration.ofDays(31))))
                .hasValueSatisfying(
                        text -> assertThat(text).startsWith("OVERDUE: Charge low, not measured again for 31 days"));
        assertThat(Ran.of("", "history", folder.toString(), "--overdue").out()).contains("OVERDUE");

        Scripted.charging("2026-b").about(About.APPLIANCE, "sn-1").in(folder);
        assertThat(TEXTS.followUp(visits(), start.plus(Duration.ofDays(31)))).isEmpty();
        assertThat(Ran.of("", "history", folder.toString(), "--overdue").out())
                .contains("No session names such equipment.");
    }

    @Test
    void the_history_is_written_as_a_page() throws Exception {
        Scripted.valve("2026-a").about(About.APPLIANCE, "SN 4471").in(folder);
        Scripted.charging("2026-b").about(About.APPLIANCE, "sn-4471").in(folder);
        Path page = folder.resolve("history.html");

        assertThat(Ran.of("", "history", folder.toString(), "--html", page.toString())
                        .code())
                .isZero();
        assertThat(Files.readString(page)).contains("<h2>sn-4471</h2>", "Visit 2", "changed", "leak rate of");
    }
}
