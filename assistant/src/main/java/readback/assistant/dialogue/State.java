package readback.assistant.dialogue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Everything that a session knows at one moment. Immutable; made only by {@link Dialogue} from the session's events.
 *
 * @param at time of the latest event
 * @param assessment what is known, and what follows from it
 * @param conversation where the talk stands
 * @param warnings which cautions were given and which wait for an acknowledgement
 * @param announced what was spoken last of each report, in its recorded form
 * @param waits steps that wait for time to pass, with the moment they began
 */
public record State(
        Instant at,
        Assessment assessment,
        Conversation conversation,
        GivenCautions warnings,
        Map<String, String> announced,
        Map<String, Instant> waits) {

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
                Map.of());
    }

    public SessionSettings settings() {
        return assessment.settings();
    }

    /** Names of the jobs under way, the current one last; the others go on when it is done. */
    public List<String> jobs() {
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
    public String job() {
        return jobs().get(jobs().size() - 1);
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

    /** The step asked last, by its name. */
    public Optional<String> asked() {
        return conversation.asked();
    }

    /** Whether a value waits for an explicit yes or for a choice between two that sound alike. */
    public boolean inDoubt() {
        return conversation
                .pending()
                .filter(pending -> !(pending instanceof Pending.Leave))
                .isPresent();
    }

    /** Cautions that wait for the technician's word that they were understood, by name. */
    public Set<String> unheeded() {
        return warnings.unheeded();
    }

    /** What was spoken last of a report. */
    public Optional<String> announced(String report) {
        return Optional.ofNullable(announced.get(report));
    }

    /** Whether a report has an outcome, and it was spoken as it is now. */
    public boolean told(String report) {
        Optional<String> due = assessment.report(report).map(Report::recorded);
        return due.isPresent() && due.equals(announced(report));
    }

    /** Everything announced, the charge verdict first, in one line; empty while nothing was. */
    public Optional<String> verdict() {
        List<String> all = new ArrayList<>();
        announced(Assessment.CHARGE).ifPresent(all::add);
        new TreeMap<>(announced).forEach((report, outcome) -> {
            if (!report.equals(Assessment.CHARGE)) {
                all.add(outcome);
            }
        });
        return all.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", all));
    }

    State at(Instant now) {
        return new State(now, assessment, conversation, warnings, announced, waits);
    }

    State with(Sheet next) {
        return new State(at, assessment.with(next), conversation, warnings, announced, waits);
    }

    State with(Conversation next) {
        return new State(at, assessment, next, warnings, announced, waits);
    }

    State with(SessionSettings next) {
        return new State(at, assessment.with(next), conversation, warnings, announced, waits);
    }

    State with(GivenCautions next) {
        return new State(at, assessment, conversation, next, announced, waits);
    }

    State announcing(String report, String outcome) {
        Map<String, String> more = new TreeMap<>(announced);
        more.put(report, outcome);
        return new State(at, assessment, conversation, warnings, more, waits);
    }

    /** What was said of a report holds no longer. */
    State withdrawing(String report) {
        Map<String, String> fewer = new TreeMap<>(announced);
        fewer.remove(report);
        return new State(at, assessment, conversation, warnings, fewer, waits);
    }

    State waiting(String step, Instant since) {
        Map<String, Instant> more = new TreeMap<>(waits);
        more.put(step, since);
        return new State(at, assessment, conversation, warnings, announced, more);
    }

    State notWaiting(String step) {
        Map<String, Instant> fewer = new TreeMap<>(waits);
        fewer.remove(step);
        return new State(at, assessment, conversation, warnings, announced, fewer);
    }

    /** Puts another job on top; one that is under way already comes to the top. */
    State doing(String job) {
        List<String> order = new ArrayList<>(jobs());
        order.remove(job);
        order.add(job);
        return new State(at, assessment.doing(order), conversation, warnings, announced, waits);
    }

    /** Takes the current job off; the one below goes on. */
    State doneWithJob() {
        return new State(
                at, assessment.doing(jobs().subList(0, jobs().size() - 1)), conversation, warnings, announced, waits);
    }

    /** Begins a further round of measurements with a cleared sheet. */
    State measuringAgain(Round acted, Sheet cleared, String report) {
        Map<String, String> fewer = new TreeMap<>(announced);
        fewer.remove(report);
        return new State(at, assessment.measuringAgain(acted, cleared), conversation, warnings, fewer, waits);
    }
}
