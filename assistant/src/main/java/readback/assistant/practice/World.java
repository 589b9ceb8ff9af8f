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
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.session.Audience;
import readback.assistant.session.Timers;
import readback.assistant.simulated.Site;
import readback.calc.caution.CautionRule;
import readback.calc.diagnosis.Finding;
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
    private @Nullable State state;
    private @Nullable State concluded;

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
        pass(event.at());
        timers.follow(event, turn);
        told.addAll(turn.outcome().cautions());
        state = turn.state();
        if (turn.state().told(Judged.CHARGE)) {
            concluded = turn.state();
        }
        refrigerant(turn.state());
        turn.outcome()
                .change(Slots.WORK_DONE)
                .flatMap(change -> change.after())
                .filter(Content.Option.class::isInstance)
                .map(content -> ((Content.Option) content).option())
                .flatMap(Work::named)
                .ifPresent(this::repair);
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

    private void pass(Instant at) {
        Instant before = now;
        if (before == null) {
            began = at;
            now = at;
            return;
        }
        timers.elapsed(at);
        Duration left = Duration.between(before, at);
        while (left.compareTo(Duration.ZERO) > 0) {
            Duration step = left.compareTo(GLANCE) < 0 ? left : GLANCE;
            site.passes(step);
            if (site.runs()) {
                site.threatens().forEach(rule -> threatened.merge(rule, step, Duration::plus));
            }
            left = left.minus(step);
        }
        now = at;
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

    private void repair(Work work) {
        work.mends().stream()
                .filter(fault -> scenario.drawn().truth().fault().equals(Optional.of(fault)))
                .forEach(fault -> {
                    if (repaired.add(fault)) {
                        site.mends(fault);
                    }
                });
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
