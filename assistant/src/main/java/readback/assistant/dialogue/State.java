package readback.assistant.dialogue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import readback.assistant.dialogue.caution.GivenCautions;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Verdict;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Judged;

/**
 * Everything that a session knows at one moment. Immutable; made only by {@link Dialogue} from the session's events.
 *
 * @param at time of the latest event
 * @param assessment what is known, and what follows from it
 * @param conversation where the talk stands
 * @param warnings which cautions were given and which wait for an acknowledgement
 * @param announced what was spoken last of each thing that is judged
 * @param waits steps that wait for time to pass, with the moment they began
 * @param probes what instruments show that give values by themselves
 */
public record State(
        Instant at,
        Assessment assessment,
        Conversation conversation,
        GivenCautions warnings,
        Map<Judged, JobOutcome> announced,
        Map<String, Instant> waits,
        Probes probes) {

    public State {
        announced = Map.copyOf(announced);
        waits = Map.copyOf(waits);
    }

    static State opened(Event.Started started) {
        return new State(
                started.at(),
                new Assessment(started.settings(), List.of(started.settings().job()), Sheet.EMPTY, List.of()),
                Conversation.opened(started.settings().brief()),
                GivenCautions.NONE,
                Map.of(),
                Map.of(),
                Probes.NONE);
    }

    public SessionSettings settings() {
        return assessment.settings();
    }

    /** Names of the jobs under way, the current one last; the others go on when it is done. */
    public List<JobId> jobs() {
        return assessment.jobs();
    }

    public Sheet sheet() {
        return assessment.sheet();
    }

    /** Measurements that were acted on, oldest first. */
    public List<Round> rounds() {
        return assessment.rounds();
    }

    /** Name of the job being done. */
    public JobId job() {
        return assessment.job();
    }

    /** Whether the session is over. */
    public boolean closed() {
        return conversation.mode() == Conversation.Mode.CLOSED;
    }

    /** Whether values and verdicts only are spoken. */
    public boolean brief() {
        return conversation.brief();
    }

    /** Whether "hold on" was said and "carry on" not yet. */
    public boolean held() {
        return conversation.mode() == Conversation.Mode.HELD;
    }

    /** Whether the technician is examined and has not said his own verdict yet. */
    public boolean examined() {
        return settings().tutor() == Tutor.EXAMINER
                && sheet().answer(Slots.OWN_VERDICT).isEmpty();
    }

    /** The step asked last, by its name. */
    public Optional<String> asked() {
        return conversation.asked();
    }

    /** Cautions that wait for the technician's word that they were understood. */
    public Set<CautionRule> unheeded() {
        return warnings.unheeded();
    }

    /** What was spoken last of a thing that is judged. */
    public Optional<JobOutcome> announced(Judged what) {
        return Optional.ofNullable(announced.get(what));
    }

    /** Whether a thing has an outcome, and it was spoken as it is now. */
    public boolean told(Judged what) {
        Optional<JobOutcome> due = assessment.announcement(what).map(Announcement::outcome);
        return due.isPresent() && due.equals(announced(what));
    }

    /** The verdict on the charge, where it was spoken as it is now. */
    Optional<Verdict.Kind> verdictTold() {
        return assessment.verdict().filter(any -> told(Judged.CHARGE));
    }

    /** Everything announced, the charge first. */
    public List<JobOutcome> standing() {
        return Stream.of(Judged.values())
                .flatMap(what -> announced(what).stream())
                .toList();
    }

    State at(Instant now) {
        return new State(now, assessment, conversation, warnings, announced, waits, probes);
    }

    State with(Sheet next) {
        return new State(at, assessment.with(next), conversation, warnings, announced, waits, probes);
    }

    State with(Conversation next) {
        return new State(at, assessment, next, warnings, announced, waits, probes);
    }

    State with(SessionSettings next) {
        return new State(at, assessment.with(next), conversation, warnings, announced, waits, probes);
    }

    State with(GivenCautions next) {
        return new State(at, assessment, conversation, next, announced, waits, probes);
    }

    State with(Probes next) {
        return new State(at, assessment, conversation, warnings, announced, waits, next);
    }

    State announcing(JobOutcome outcome) {
        Map<Judged, JobOutcome> more = new EnumMap<>(Judged.class);
        more.putAll(announced);
        more.put(outcome.judged(), outcome);
        return new State(at, assessment, conversation, warnings, more, waits, probes);
    }

    /** What was said of a thing holds no longer. */
    State withdrawing(Judged what) {
        return new State(at, assessment, conversation, warnings, allBut(what), waits, probes);
    }

    private Map<Judged, JobOutcome> allBut(Judged what) {
        Map<Judged, JobOutcome> fewer = new EnumMap<>(Judged.class);
        fewer.putAll(announced);
        fewer.remove(what);
        return fewer;
    }

    State waiting(String step, Instant since) {
        Map<String, Instant> more = new TreeMap<>(waits);
        more.put(step, since);
        return new State(at, assessment, conversation, warnings, announced, more, probes);
    }

    State notWaiting(String step) {
        Map<String, Instant> fewer = new TreeMap<>(waits);
        fewer.remove(step);
        return new State(at, assessment, conversation, warnings, announced, fewer, probes);
    }

    /** Puts another job on top; one that is under way already comes to the top. */
    State doing(JobId job) {
        List<JobId> order = new ArrayList<>(jobs());
        order.remove(job);
        order.add(job);
        return new State(at, assessment.doing(order), conversation, warnings, announced, waits, probes);
    }

    /** Takes the current job off; the one below goes on. */
    State doneWithJob() {
        return new State(
                at,
                assessment.doing(jobs().subList(0, jobs().size() - 1)),
                conversation,
                warnings,
                announced,
                waits,
                probes);
    }

    /** Begins a further round of measurements with a cleared sheet. */
    State measuringAgain(Round acted, Sheet cleared, Judged what) {
        return new State(
                at, assessment.measuringAgain(acted, cleared), conversation, warnings, allBut(what), waits, probes);
    }
}
