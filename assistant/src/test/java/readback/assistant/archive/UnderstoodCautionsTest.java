package readback.assistant.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.Header;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;
import readback.assistant.session.Session;
import readback.calc.caution.CautionRule;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;

/** A second session of a day knows what was understood in the first; anything else is read out in full. */
class UnderstoodCautionsTest {

    /** Seven hours behind: its day ends at seven in the morning of the next day in UTC. */
    private static final ZoneId ZONE = ZoneId.of("-07:00");

    private static final Instant MORNING = Instant.parse("2026-07-14T16:00:00Z");
    private static final SessionSettings STANDARD = SessionSettings.STANDARD;

    @TempDir
    private Path sessions;

    private static SessionSettings at(String site, String technician) {
        return new SessionSettings(
                STANDARD.job(),
                STANDARD.units(),
                false,
                STANDARD.known(),
                STANDARD.limits(),
                Optional.empty(),
                Optional.of(technician).filter(name -> !name.isEmpty()),
                Optional.of(site).filter(name -> !name.isEmpty()));
    }

    private void record(Instant start, SessionSettings settings, String... words) throws Exception {
        String name = start.toString().replace(':', '-');
        try (SessionRecord record =
                SessionRecord.create(sessions, new Header(name, start, "test", Scripted.parts(), Map.of()))) {
            Session session = Session.open(Scripted.dialogue(), Scripted.wording(), record, List.of(), settings, start);
            Instant now = start;
            for (String line : words) {
                now = now.plusSeconds(5);
                session.on(new Event.Heard(now, Event.Source.KEYS, List.of(Hypothesis.typed(line))));
            }
        }
    }

    private java.util.Set<CautionRule> before(SessionSettings settings, Instant now) {
        return UnderstoodCautions.in(sessions, ZONE, Checklists.standard()).before(settings, now);
    }

    @Test
    void what_was_understood_in_the_morning_is_known_in_the_evening() throws Exception {
        record(MORNING, at("12 Example Road", "K. Example"), "four ten a", "piston", "understood", "yes");

        Instant evening = Instant.parse("2026-07-15T03:00:00Z");
        assertThat(before(at("12 Example Road", "K. Example"), evening))
                .containsExactlyInAnyOrder(
                        CautionRule.HIGH_PRESSURE,
                        CautionRule.FROSTBITE,
                        CautionRule.VENTING_PROHIBITED,
                        CautionRule.CERTIFIED_WORK);
    }

    @Test
    void who_is_told_by_number_knows_nothing_of_another() throws Exception {
        Instant evening = Instant.parse("2026-07-15T03:00:00Z");
        String several = "K. Example; L. Example";
        record(MORNING, at("12 Example Road", several), "four ten a", "piston", "understood", "yes");

        assertThat(before(at("12 Example Road", several), evening)).isEmpty();

        record(
                MORNING.plusSeconds(3600),
                at("12 Example Road", "K. Example"),
                "four ten a",
                "technician number two",
                "piston",
                "understood",
                "yes");

        assertThat(before(at("12 Example Road", "K. Example"), evening)).isEmpty();
    }

    @Test
    void another_day_another_site_another_technician_and_no_site_know_nothing() throws Exception {
        record(MORNING, at("12 Example Road", "K. Example"), "four ten a", "piston", "understood", "yes");
        record(MORNING.plusSeconds(1), at("", "K. Example"), "four ten a", "piston", "understood", "yes");

        Instant noon = MORNING.plus(Duration.ofHours(3));
        assertThat(before(at("12 Example Road", "K. Example"), Instant.parse("2026-07-15T07:00:00Z")))
                .isEmpty();
        assertThat(before(at("14 Example Road", "K. Example"), noon)).isEmpty();
        assertThat(before(at("12 Example Road", "L. Example"), noon)).isEmpty();
        assertThat(before(at("", "K. Example"), noon)).isEmpty();
        assertThat(before(at("12 Example Road", "K. Example"), noon)).isNotEmpty();
    }

    @Test
    void what_was_given_but_not_said_to_be_understood_does_not_count() throws Exception {
        record(MORNING, at("12 Example Road", "K. Example"), "four ten a", "piston", "why");

        assertThat(before(at("12 Example Road", "K. Example"), MORNING.plus(Duration.ofHours(3))))
                .isEmpty();
    }

    @Test
    void a_folder_that_is_not_there_knows_nothing() {
        assertThat(UnderstoodCautions.in(sessions.resolve("none"), ZONE, Checklists.standard())
                        .before(at("12 Example Road", "K. Example"), MORNING))
                .isEmpty();
    }
}
