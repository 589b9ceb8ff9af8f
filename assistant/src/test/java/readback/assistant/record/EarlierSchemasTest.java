package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.recorded.Scripted;
import readback.assistant.replay.Verification;
import readback.assistant.replay.VerificationSentences;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Meaning;
import readback.grammar.Reason;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/** Records of every version of the written form that ever was: they must stay readable. */
class EarlierSchemasTest {

    @Test
    void version_1_is_read() throws Exception {
        RecordedSession session = read("session-schema-1.jsonl");
        assertThat(session.fault()).isEmpty();
        assertThat(session.closed()).isTrue();
        assertThat(session.header().session()).isEqualTo("version-1");
        assertThat(session.header().startedAt()).isEqualTo(Instant.parse("2026-07-14T13:05:00Z"));
        assertThat(session.header().about()).containsEntry(About.TECHNICIAN, "K. Example");
        assertThat(session.header().parts()).containsKeys("checklists", "grammar", "texts");
        Entry last = session.entries().get(session.entries().size() - 1);
        assertThat(last.event()).isInstanceOf(Event.Ended.class);
        assertThat(last.outcome().line()).startsWith("add method=total-superheat");
        assertThat(session.entries())
                .anySatisfy(entry -> assertThat(entry.outcome()
                                .change(Slot.of(Quantity.SUCTION_LINE_TEMPERATURE))
                                .map(Change::line))
                        .contains("72 °F"));
    }

    @Test
    void version_2_is_read() throws Exception {
        RecordedSession session = read("session-schema-2.jsonl");

        assertThat(session.fault()).isEmpty();
        assertThat(session.header().session()).isEqualTo("version-2");
        Entry last = session.entries().get(session.entries().size() - 1);
        assertThat(last.outcome().standing().stream().findFirst())
                .map(JobOutcome::line)
                .hasValueSatisfying(line ->
                        assertThat(line).startsWith("add method=subcooling evaporating=280345mK condensing=316873mK"));
        assertThat(session.entries())
                .anySatisfy(entry -> assertThat(entry.outcome()
                                .change(Slot.of(Quantity.REFRIGERANT_ADDED))
                                .flatMap(Change::after)
                                .flatMap(Content::reading))
                        .contains(new Reading(Quantity.REFRIGERANT_ADDED, new BigDecimal("6"), Unit.OUNCE)));
    }

    @Test
    void version_3_is_read() throws Exception {
        RecordedSession session = read("session-schema-3.jsonl");

        assertThat(session.fault()).isEmpty();
        assertThat(session.closed()).isTrue();
        assertThat(session.entries())
                .extracting(entry -> entry.outcome().understood())
                .contains(new Understood.Meant(new Meaning.NotUnderstood(
                        "blue", Reason.of(Reason.Kind.RECORDED_SENTENCE, "I do not know \"blue\" here."))));
        assertThat(session.entries())
                .anySatisfy(
                        entry -> assertThat(entry.outcome().standing().stream().map(JobOutcome::line))
                                .anySatisfy(line -> assertThat(line).startsWith("add method=total-superheat")));
    }

    /** A record that was not altered is not said to be, whatever a later version makes of its words. */
    @Test
    void a_record_of_an_earlier_version_is_verified_as_such() throws Exception {
        for (String sample : List.of("session-schema-1.jsonl", "session-schema-2.jsonl", "session-schema-3.jsonl")) {
            RecordedSession session = read(sample);
            Verification verification =
                    Verification.of(Scripted.dialogue(), Scripted.wording(), Scripted.parts(), session);

            assertThat(verification.byAnotherVersion()).as(sample).isTrue();
            List<String> sentences = new VerificationSentences(Language.english()).sentences(verification);
            assertThat(sentences.get(0))
                    .startsWith("Made with version " + session.header().program() + ", differs at event 3, cautions:")
                    .contains("not a change of the record");
            assertThat(sentences.get(1)).isEqualTo("The record holds: every line fits its hash and the line before.");
            assertThat(sentences).noneSatisfy(sentence -> assertThat(sentence).startsWith("The replay differs"));
            assertThat(sentences)
                    .anySatisfy(
                            sentence -> assertThat(sentence).startsWith("Other program code than at the time: – -> "));
        }
    }

    private static RecordedSession read(String resource) throws Exception {
        try (InputStream in = EarlierSchemasTest.class.getResourceAsStream(resource)) {
            return RecordedSession.parse(in.readAllBytes(), Path.of(resource));
        }
    }
}
