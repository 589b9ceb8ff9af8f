package readback.assistant.report;

import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.About;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.replay.ByNumber;
import readback.assistant.replay.ChargeMoves;
import readback.assistant.replay.Verification;
import readback.assistant.replay.WorkDone;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Judgement;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Wording;

/**
 * What a session's record says, in the order of a report.
 *
 * @param settings with which the session began
 * @param answers every slot that was ever filled, in the order of first filling
 * @param rounds every verdict that was announced, in order; last the one that the final readings give
 * @param results outcomes of other jobs, in order
 * @param moves refrigerant in and out
 * @param work parts that were put in and what else was put right, in order
 * @param reasons the last verdict in words and why it is what it is
 * @param last what the last state knows
 */
public record JobReport(
        RecordedSession session,
        Verification verification,
        RemarkFile remarks,
        SessionSettings settings,
        List<AnswerLine> answers,
        List<Round> rounds,
        List<Result> results,
        ChargeMoves moves,
        List<WorkDone.Told> work,
        List<CautionLine> cautions,
        List<DoubtLine> doubts,
        List<NoteLine> notes,
        List<String> reasons,
        Assessment last) {

    public JobReport {
        answers = List.copyOf(answers);
        rounds = List.copyOf(rounds);
        results = List.copyOf(results);
        work = List.copyOf(work);
        cautions = List.copyOf(cautions);
        doubts = List.copyOf(doubts);
        notes = List.copyOf(notes);
        reasons = List.copyOf(reasons);
    }

    /**
     * A slot's content and how it came to be.
     *
     * @param content empty when the answer was taken back, or put aside for another round
     * @param confirmed whether it was in doubt and an explicit yes was given
     * @param earlier what it was before, oldest first
     */
    public record AnswerLine(
            Slot slot, Optional<Content> content, int event, Instant at, boolean confirmed, List<Earlier> earlier) {
        public AnswerLine {
            earlier = List.copyOf(earlier);
        }
    }

    /** A content that was replaced or taken back. */
    public record Earlier(int event, Instant at, Content content) {}

    /**
     * One verdict.
     *
     * @param outcome as it was announced
     */
    public record Round(int event, Instant at, ChargeVerdict outcome, Judgement judgement, Assessment assessment) {}

    /**
     * The outcome of another job than the charge check.
     *
     * @param figures what was measured for it, and the numbers that followed
     * @param said what was said at that moment
     */
    public record Result(int event, Instant at, JobOutcome outcome, List<Figure> figures, List<String> said) {
        public Result {
            figures = List.copyOf(figures);
            said = List.copyOf(said);
        }
    }

    /**
     * A caution that was given.
     *
     * @param needed whether work waits for the technician's word that it was understood
     * @param acknowledged number of the event with which the technician said that it was understood
     */
    public record CautionLine(CautionRule rule, int event, Instant at, boolean needed, OptionalInt acknowledged) {}

    /**
     * Something that was doubtful.
     *
     * @param heard the alternatives with their confidences
     * @param answer what was said about it
     * @param settled what the next changes were; empty when nothing followed
     */
    public record DoubtLine(
            int event, Instant at, List<String> heard, Understood understood, String answer, List<Change> settled) {
        public DoubtLine {
            heard = List.copyOf(heard);
            settled = List.copyOf(settled);
        }
    }

    /** Words to keep. */
    public record NoteLine(int event, Instant at, String words) {}

    /**
     * The report of a record, as far as its chain holds.
     *
     * @param parts fingerprints of what this program understands and says with
     * @throws IllegalArgumentException for a record without any event
     */
    public static JobReport of(
            Dialogue dialogue,
            Wording wording,
            Map<String, String> parts,
            RecordedSession session,
            RemarkFile remarks) {
        return new ReportBuilder(dialogue, wording)
                .build(session, Verification.of(dialogue, wording, parts, session), remarks);
    }

    /** The last verdict, if any was announced. */
    public Optional<Round> finalRound() {
        return rounds.isEmpty() ? Optional.empty() : Optional.of(rounds.get(rounds.size() - 1));
    }

    /** The latest result of each kind, in the order in which they were reached. */
    public List<Result> latestResults() {
        Map<Judged, Result> latest = new LinkedHashMap<>();
        for (Result result : results) {
            latest.remove(result.outcome().judged());
            latest.put(result.outcome().judged(), result);
        }
        return List.copyOf(latest.values());
    }

    /** The events at which an outcome was announced that was the last of its kind. */
    Set<Integer> latestOutcomeEvents() {
        Set<Integer> events = new HashSet<>();
        latestResults().forEach(result -> events.add(result.event()));
        finalRound().ifPresent(round -> events.add(round.event()));
        return events;
    }

    /** The figures of an outcome that was announced at an event. */
    List<Figure> figures(int event, JobOutcome outcome) {
        return results.stream()
                .filter(result -> result.event() == event && result.outcome().equals(outcome))
                .findFirst()
                .map(Result::figures)
                .orElseGet(() -> outcome.figures(settings.units()));
    }

    /** What fills a slot now. */
    public Optional<Content> answer(Slot slot) {
        return answers.stream()
                .filter(line -> line.slot().equals(slot))
                .findFirst()
                .flatMap(AnswerLine::content);
    }

    /** What the technician told, the header or the settings say about the job under a name of {@link About}. */
    public Optional<String> about(String name) {
        Optional<String> given = Optional.ofNullable(session.header().about().get(name))
                .or(() -> name.equals(About.TECHNICIAN) ? settings.technician() : Optional.empty())
                .or(() -> name.equals(About.PLACE) ? settings.site() : Optional.empty());
        return ByNumber.of(name, given, slot -> answer(slot).map(Content::line));
    }
}
