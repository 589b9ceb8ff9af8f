package readback.assistant.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Answer;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.replay.ChargeMoves;
import readback.assistant.replay.JobFigures;
import readback.assistant.replay.Moment;
import readback.assistant.replay.Replay;
import readback.assistant.replay.Scene;
import readback.assistant.replay.Verification;
import readback.assistant.replay.WorkDone;
import readback.calc.caution.CautionRule;
import readback.calc.quantity.Reading;
import readback.grammar.Meaning;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Wording;

/** Gathers a report while a session is replayed. For one session, one thread. */
final class ReportBuilder {

    private final Dialogue dialogue;
    private final Wording wording;
    private final Map<Slot, JobReport.AnswerLine> answers = new LinkedHashMap<>();
    private final List<JobReport.Round> rounds = new ArrayList<>();
    private final List<JobReport.Result> results = new ArrayList<>();
    private final List<JobReport.CautionLine> cautions = new ArrayList<>();
    private final List<JobReport.DoubtLine> doubts = new ArrayList<>();
    private final List<JobReport.NoteLine> notes = new ArrayList<>();

    /** Cautions that wait for a step to be answered: index in {@link #cautions} by the step. */
    private final Map<Integer, String> awaitingStep = new HashMap<>();

    private List<String> reasons = List.of();
    private @Nullable State last;
    private Optional<Entry> before = Optional.empty();

    ReportBuilder(Dialogue dialogue, Wording wording) {
        this.dialogue = dialogue;
        this.wording = wording;
    }

    JobReport build(RecordedSession session, Verification verification, RemarkFile remarks) {
        ChargeMoves moves = new ChargeMoves(session.header().about());
        WorkDone work = new WorkDone();
        Replay.through(dialogue, session.entries(), scene -> {
            moves.follow(scene.entry());
            work.follow(scene.entry());
            take(scene);
            return true;
        });
        State end = last;
        if (end == null || !(session.entries().get(0).event() instanceof Event.Started started)) {
            throw new IllegalArgumentException("a record without an event has nothing to report");
        }
        Assessment known = end.assessment();
        List<JobReport.AnswerLine> lines =
                answers.values().stream().map(line -> confirmed(line, end)).toList();
        return new JobReport(
                session,
                verification,
                remarks,
                started.settings(),
                lines,
                rounds,
                results,
                moves,
                work.all(),
                cautions,
                doubts,
                notes,
                reasons,
                known);
    }

    private void take(Scene scene) {
        Entry entry = scene.entry();
        State state = scene.turn().state();
        settleDoubts(entry);
        entry.outcome().changes().forEach(change -> answer(entry, change));
        acknowledge(scene);
        entry.outcome().cautions().forEach(rule -> caution(entry, rule, state));
        if (Moment.DOUBT.in(entry, before)) {
            doubt(entry);
        }
        if (entry.outcome().understood().meaning().orElse(null) instanceof Meaning.Note note) {
            notes.add(new JobReport.NoteLine(entry.number(), entry.event().at(), note.words()));
        }
        outcomes(entry, scene);
        last = state;
        before = Optional.of(entry);
    }

    private void answer(Entry entry, Change change) {
        JobReport.AnswerLine line = answers.get(change.slot());
        List<JobReport.Earlier> earlier = new ArrayList<>();
        if (line != null) {
            earlier.addAll(line.earlier());
            line.content()
                    .filter(before -> !change.after().equals(Optional.of(before)))
                    .ifPresent(before -> earlier.add(new JobReport.Earlier(line.event(), line.at(), before)));
        }
        answers.put(
                change.slot(),
                new JobReport.AnswerLine(
                        change.slot(),
                        change.after(),
                        entry.number(),
                        entry.event().at(),
                        false,
                        earlier));
    }

    private static JobReport.AnswerLine confirmed(JobReport.AnswerLine line, State end) {
        boolean confirmed = end.sheet()
                .answer(line.slot())
                .filter(answer -> answer instanceof Answer.Value value && value.confirmed())
                .isPresent();
        return new JobReport.AnswerLine(
                line.slot(), line.content(), line.event(), line.at(), confirmed, line.earlier());
    }

    private void caution(Entry entry, CautionRule rule, State state) {
        boolean needed = rule.caution().needsAcknowledgement();
        if (needed && !state.unheeded().contains(rule)) {
            state.asked().ifPresent(step -> awaitingStep.put(cautions.size(), step));
        }
        cautions.add(
                new JobReport.CautionLine(rule, entry.number(), entry.event().at(), needed, OptionalInt.empty()));
    }

    private void acknowledge(Scene scene) {
        Entry entry = scene.entry();
        for (int i = 0; i < cautions.size(); i++) {
            JobReport.CautionLine line = cautions.get(i);
            String step = awaitingStep.get(i);
            boolean heeded = scene.before().unheeded().contains(line.rule())
                    && !scene.turn().state().unheeded().contains(line.rule());
            boolean answered = step != null
                    && entry.outcome()
                            .change(new Slot(step))
                            .flatMap(Change::after)
                            .isPresent();
            if (line.acknowledged().isEmpty() && (heeded || answered)) {
                cautions.set(
                        i,
                        new JobReport.CautionLine(
                                line.rule(), line.event(), line.at(), line.needed(), OptionalInt.of(entry.number())));
            }
        }
    }

    private void doubt(Entry entry) {
        List<String> heard = entry.event() instanceof Event.Heard words
                ? words.hypotheses().stream()
                        .map(each -> String.format(Locale.ROOT, "%s (%.0f %%)", each.words(), 100 * each.confidence()))
                        .toList()
                : List.of();
        doubts.add(new JobReport.DoubtLine(
                entry.number(),
                entry.event().at(),
                heard,
                entry.outcome().understood(),
                entry.said().isEmpty() ? "" : entry.said().get(0),
                List.of()));
    }

    private void settleDoubts(Entry entry) {
        if (entry.outcome().changes().isEmpty()) {
            return;
        }
        doubts.replaceAll(doubt -> doubt.settled().isEmpty()
                ? new JobReport.DoubtLine(
                        doubt.event(),
                        doubt.at(),
                        doubt.heard(),
                        doubt.understood(),
                        doubt.answer(),
                        entry.outcome().changes())
                : doubt);
    }

    private void explain(State state) {
        reasons = dialogue.explained(state).stream()
                .map(message -> wording.shown(message, state.settings().units()))
                .toList();
    }

    /** What was announced at this entry: verdicts on the charge make rounds, everything else results. */
    private void outcomes(Entry entry, Scene scene) {
        List<JobOutcome> known =
                before.map(earlier -> earlier.outcome().standing()).orElse(List.of());
        entry.outcome().standing().stream()
                .filter(outcome -> !known.contains(outcome))
                .forEach(outcome -> {
                    if (outcome instanceof ChargeVerdict charge) {
                        verdict(entry, scene.turn().state(), charge);
                    } else {
                        results.add(new JobReport.Result(
                                entry.number(),
                                entry.event().at(),
                                outcome,
                                JobFigures.of(
                                        outcome, scene.turn().state().settings().units(), this::reading),
                                entry.said()));
                    }
                });
    }

    private Optional<Reading> reading(Slot slot) {
        return Optional.ofNullable(answers.get(slot))
                .flatMap(JobReport.AnswerLine::content)
                .flatMap(Content::reading);
    }

    private void verdict(Entry entry, State state, ChargeVerdict announced) {
        Assessment assessment = state.assessment();
        assessment
                .judgement()
                .ifPresent(found -> rounds.add(
                        new JobReport.Round(entry.number(), entry.event().at(), announced, found, assessment)));
        explain(state);
    }
}
