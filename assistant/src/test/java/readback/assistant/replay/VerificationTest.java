package readback.assistant.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Turn;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.Entry;
import readback.assistant.record.Header;
import readback.assistant.record.RecordedSession;
import readback.assistant.recorded.Scripted;
import readback.calc.charge.Verdict;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/** Whether a recorded session leads to the same results again. */
class VerificationTest {

    private static Verification verified(RecordedSession session) {
        return Verification.of(Scripted.dialogue(), Scripted.wording(), Scripted.parts(), session);
    }

    /** The session with one entry's outcome changed, as someone could who also rewrote every hash. */
    private static RecordedSession forged(RecordedSession session, int number, UnaryOperator<Turn.Outcome> forgery) {
        List<Entry> entries = new ArrayList<>(session.entries());
        Entry entry = entries.get(number - 1);
        entries.set(
                number - 1,
                new Entry(
                        number,
                        entry.event(),
                        forgery.apply(entry.outcome()),
                        entry.said(),
                        entry.spoken(),
                        entry.closed(),
                        entry.audio()));
        return new RecordedSession(
                session.folder(), session.header(), entries, session.hash(), session.length(), Optional.empty());
    }

    @Test
    void an_honest_record_is_identical(@TempDir Path sessions) throws Exception {
        for (Scripted script : List.of(Scripted.charging("one"), Scripted.valve("two"))) {
            RecordedSession session = script.readFrom(sessions);
            assertThat(verified(session))
                    .returns(true, Verification::identical)
                    .returns(session.entries().size(), Verification::events);
        }
    }

    @Test
    void a_forged_reading_is_named_with_its_event(@TempDir Path sessions) throws Exception {
        RecordedSession honest = Scripted.pistonReadings("one").readFrom(sessions);
        int event = eventThatChanges(honest, "SUCTION_PRESSURE");
        RecordedSession forged = forged(honest, event, outcome -> {
            Reading other = new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("128"), Unit.PSIG);
            Change change =
                    new Change(Slot.of(other.quantity()), Optional.empty(), Optional.of(new Content.Value(other)));
            return new Turn.Outcome(outcome.understood(), List.of(change), outcome.standing(), outcome.cautions());
        });
        assertThat(verified(forged).difference())
                .contains(new Difference(event, "SUCTION_PRESSURE", "128 psig", "118 psig"));
    }

    @Test
    void a_forged_verdict_and_a_suppressed_caution_are_named(@TempDir Path sessions) throws Exception {
        RecordedSession honest = Scripted.pistonReadings("one").readFrom(sessions);
        int last = honest.entries().size();
        RecordedSession better = withBetterVerdict(honest);
        assertThat(verified(better).difference())
                .hasValueSatisfying(found -> assertThat(found.toString())
                        .startsWith("event " + last + ", verdict: recorded \"in-tolerance method"));
        int warned = honest.entries().stream()
                .filter(entry -> !entry.outcome().cautions().isEmpty())
                .findFirst()
                .orElseThrow()
                .number();
        RecordedSession silent = forged(
                honest,
                warned,
                outcome -> new Turn.Outcome(outcome.understood(), outcome.changes(), outcome.standing(), List.of()));
        assertThat(verified(silent).difference())
                .hasValueSatisfying(found -> assertThat(found.what()).isEqualTo("cautions"));
    }

    @Test
    void other_texts_than_at_the_time_are_told_and_words_are_not_compared(@TempDir Path sessions) throws Exception {
        RecordedSession honest = Scripted.pistonReadings("one").readFrom(sessions);
        Header header = honest.header();
        Map<String, String> parts = new TreeMap<>(header.parts());
        parts.put("texts", "of-another-version");
        List<Entry> entries = honest.entries().stream()
                .map(entry -> new Entry(
                        entry.number(),
                        entry.event(),
                        entry.outcome(),
                        List.of("other words"),
                        entry.spoken(),
                        entry.closed(),
                        entry.audio()))
                .toList();
        Header other = new Header(header.session(), header.startedAt(), header.program(), parts);
        RecordedSession session =
                new RecordedSession(honest.folder(), other, entries, honest.hash(), honest.length(), Optional.empty());
        Verification verification = verified(session);
        assertThat(verification.identical()).isTrue();
        assertThat(verification.otherParts()).containsOnlyKeys("texts");
        RecordedSession sameTexts =
                new RecordedSession(honest.folder(), header, entries, honest.hash(), honest.length(), Optional.empty());
        assertThat(verified(sameTexts).difference())
                .hasValueSatisfying(found -> assertThat(found.what()).isEqualTo("words"));
    }

    /** The same difference in a record of this very version is its own. */
    @Test
    void a_difference_is_the_records_own_only_where_this_version_made_it(@TempDir Path sessions) throws Exception {
        RecordedSession honest = Scripted.pistonReadings("one").readFrom(sessions);
        int last = honest.entries().size();
        RecordedSession forged = withBetterVerdict(honest);
        VerificationSentences sentences = new VerificationSentences(Language.english());

        assertThat(sentences.sentences(verified(forged)))
                .anySatisfy(sentence -> assertThat(sentence).startsWith("The replay differs first at event " + last))
                .noneSatisfy(sentence -> assertThat(sentence).contains("Made with version"));

        Map<String, String> parts = new TreeMap<>(forged.header().parts());
        parts.put("code", "0123456789abcdef");
        Header other = new Header(forged.header().session(), forged.header().startedAt(), "0.0.9", parts);
        RecordedSession elsewhere = new RecordedSession(
                forged.folder(), other, forged.entries(), forged.hash(), forged.length(), Optional.empty());
        assertThat(sentences.sentences(verified(elsewhere)).get(0))
                .startsWith("Made with version 0.0.9, differs at event " + last);
    }

    @Test
    void a_broken_chain_is_told_and_what_holds_is_still_compared(@TempDir Path sessions) throws Exception {
        RecordedSession honest = Scripted.pistonReadings("one").readFrom(sessions);
        RecordedSession damaged = Scripted.damagedAfter(4, honest);
        Verification verification = verified(damaged);
        assertThat(verification.identical()).isFalse();
        assertThat(new VerificationSentences(Language.english()).sentences(verification))
                .contains("The record does not hold: line 6 was changed or damaged.")
                .anySatisfy(sentence -> assertThat(sentence).startsWith("The replay of 4 events is identical"));
    }

    private static RecordedSession withBetterVerdict(RecordedSession honest) {
        return forged(
                honest,
                honest.entries().size(),
                outcome -> new Turn.Outcome(
                        outcome.understood(),
                        outcome.changes(),
                        List.of(better(outcome.standing().get(0))),
                        outcome.cautions()));
    }

    private static JobOutcome better(JobOutcome outcome) {
        ChargeVerdict charge = (ChargeVerdict) outcome;
        return new ChargeVerdict(
                Verdict.Kind.IN_TOLERANCE,
                charge.borderline(),
                charge.method(),
                charge.evaporating(),
                charge.condensing(),
                charge.superheat(),
                charge.subcooling(),
                charge.target(),
                charge.valve(),
                charge.contradictions(),
                charge.early(),
                charge.failed(),
                charge.suspect());
    }

    private static int eventThatChanges(RecordedSession session, String slot) {
        return session.entries().stream()
                .filter(entry -> entry.outcome().change(new Slot(slot)).isPresent())
                .findFirst()
                .orElseThrow()
                .number();
    }
}
