package readback.assistant.practice;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.dialogue.Tutor;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.session.Audience;
import readback.assistant.session.Timers;
import readback.assistant.simulated.Site;
import readback.calc.caution.CautionRule;
import readback.calc.diagnosis.Fault;
import readback.calc.diagnosis.Finding;
import readback.calc.name.ConstantName;
import readback.calc.plant.PlantFault;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Judged;

/**
 * The unit of a practice call, with all that happens to it. It follows the session and knows only its events, so the
 * record of a call, told to a new world, comes to the same end. Owned by the session's thread.
 */
public final class World implements Audience {

    /** The unit is looked at so often while time passes. */
    private static final Duration GLANCE = Duration.ofSeconds(15);

    private final Scenario scenario;
    private final Site site;
    private final Timers timers = new Timers();
    private final Map<CautionRule, Duration> threatened = new EnumMap<>(CautionRule.class);
    private final Set<CautionRule> told = EnumSet.noneOf(CautionRule.class);
    private final Set<PlantFault> repaired = EnumSet.noneOf(PlantFault.class);
    private Mass moved = Mass.NONE;
    private @Nullable Instant began;
    private @Nullable Instant now;
    private Instant nextGlance = Instant.MAX;
    private @Nullable State state;
    private @Nullable State concluded;
    private Optional<Debrief.Exam> ownVerdict = Optional.empty();

    public World(Scenario scenario) {
        this.scenario = scenario;
        this.site = new Site(scenario.drawn());
    }

    /** The world of a recorded call at its end; empty where it was no practice, or on a unit that is not known. */
    public static Optional<World> after(RecordedSession recorded, Dialogue dialogue) {
        Optional<World> known = Optional.ofNullable(recorded.header().about().get(About.PRACTICE))
                .flatMap(Scenario::named)
                .map(World::new);
        known.ifPresent(world -> {
            @Nullable State state = null;
            for (Entry entry : recorded.entries()) {
                Turn turn = state == null && entry.event() instanceof Event.Started started
                        ? dialogue.begin(started)
                        : dialogue.on(Objects.requireNonNull(state), entry.event());
                world.happened(entry.event(), turn);
                state = turn.state();
            }
        });
        return known.filter(world -> world.state != null);
    }

    @Override
    public void happened(Event event, Turn turn) {
        if (now == null) {
            begin(event.at());
        }
        passes(event.at());
        timers.elapsed(event.at());
        timers.follow(event, turn);
        told.addAll(turn.outcome().cautions());
        state = turn.state();
        if (concluded == null) {
            turn.outcome().change(Slots.OWN_VERDICT).ifPresent(change -> {
                Optional<Fault> said = option(change).flatMap(option -> ConstantName.find(Fault.class, option));
                ownVerdict = Optional.of(
                        new Debrief.Exam(said, Debrief.suspect(turn.state().assessment())));
            });
        }
        if (turn.state().told(Judged.CHARGE)) {
            concluded = turn.state();
        }
        refrigerant(turn.state());
        turn.outcome()
                .change(Slots.WORK_DONE)
                .flatMap(World::option)
                .flatMap(Work::named)
                .ifPresent(work -> repair(work.mends()));
        turn.outcome()
                .change(Slots.THAWING)
                .flatMap(change -> change.after())
                .filter(content -> content instanceof Content.Passed passed
                        && passed.missing().isZero())
                .ifPresent(thawed -> repair(PlantFault.FROSTED_COIL));
    }

    /** Whether time is only waited out now: by the dialogue, or on hold. */
    public boolean waiting() {
        State last = state;
        return nextBell().isPresent() || (last != null && last.held() && !last.closed());
    }

    /** How long until the next wait or reminder is over; empty while nothing is waited for. */
    public Optional<Duration> nextBell() {
        Instant at = now;
        if (at == null) {
            return Optional.empty();
        }
        Map<String, Duration> left = timers.left(at);
        boolean waits = left.keySet().stream().anyMatch(timer -> !timer.contains("."));
        return waits ? left.values().stream().min(Duration::compareTo) : Optional.empty();
    }

    /** Lets time pass at the unit until then; it does not go back. */
    void passes(Instant until) {
        Instant before = now;
        if (before == null || until.isBefore(before)) {
            return;
        }
        // glances at fixed moments, so that it does not matter who lets the time pass in which steps
        while (!nextGlance.isAfter(until)) {
            Instant glance = nextGlance;
            site.passes(Duration.between(before, glance));
            before = glance;
            if (site.runs()) {
                site.threatens().forEach(rule -> threatened.merge(rule, GLANCE, Duration::plus));
            }
            nextGlance = glance.plus(GLANCE);
        }
        site.passes(Duration.between(before, until));
        now = until;
    }

    private void begin(Instant at) {
        began = at;
        now = at;
        nextGlance = at.plus(GLANCE);
    }

    /** What was told to be moved was moved; a charge weighed in replaces what was there. */
    private void refrigerant(State after) {
        Mass inAll = after.assessment().movedInAll();
        Mass more = inAll.minus(moved);
        moved = inAll;
        if (more.kilograms() == 0) {
            return;
        }
        if (after.job().equals(JobId.WEIGH_IN) && more.kilograms() > 0) {
            site.recharges(more);
        } else {
            site.moves(more);
        }
    }

    private void repair(PlantFault fault) {
        if (scenario.drawn().truth().fault().equals(Optional.of(fault)) && repaired.add(fault)) {
            site.mends(fault);
        }
    }

    public Scenario scenario() {
        return scenario;
    }

    /** What an instrument shows, or the plate tells. */
    public Optional<Reading> shown(Quantity quantity) {
        return site.reads(quantity);
    }

    /** Whether it is there, for someone who looks or tries. */
    public boolean found(Finding finding) {
        return site.finds(finding);
    }

    /** How long it has run since the compressor started, or since something was mended. */
    public Duration ran() {
        return site.ran();
    }

    /** Whether the unit still runs. */
    public boolean runs() {
        return site.runs();
    }

    /** The technician's own verdict beside what his readings pointed to then. */
    private Optional<Debrief.Exam> exam(State last) {
        return last.settings().tutor() == Tutor.EXAMINER
                ? ownVerdict.or(
                        () -> Optional.of(new Debrief.Exam(Optional.empty(), Debrief.suspect(last.assessment()))))
                : Optional.empty();
    }

    private static Optional<String> option(Change change) {
        return change.after()
                .filter(Content.Option.class::isInstance)
                .map(content -> ((Content.Option) content).option());
    }

    /** What came of the call so far. */
    public Debrief debrief() {
        State last = state;
        if (last == null || began == null || now == null) {
            throw new IllegalStateException("nothing has happened yet");
        }
        List<CautionRule> unheeded = new ArrayList<>(last.warnings().unheeded());
        return new Debrief(
                scenario,
                Optional.ofNullable(concluded).map(State::assessment),
                exam(last),
                site.moves(),
                site.wrongOunces(),
                site.charge(),
                site.recharged(),
                Set.copyOf(repaired),
                Map.copyOf(threatened),
                Set.copyOf(told),
                Set.copyOf(unheeded),
                site.runs(),
                Duration.between(began, now));
    }
}
