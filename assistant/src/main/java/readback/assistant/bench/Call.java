package readback.assistant.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.simulated.Case;
import readback.assistant.simulated.Site;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.diagnosis.Fault;
import readback.calc.quantity.Quantity;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Judged;

/** One service call from the first question to the end. Owned by one thread, made once. */
final class Call {

    private static final Instant MORNING = Instant.parse("2026-07-14T09:00:00Z");
    private static final Duration BREATH = Duration.ofSeconds(5);
    private static final Duration SETTLING = Duration.ofMinutes(15);
    private static final String SETTLE = "settle";
    private static final int MOST_TURNS = 200;

    private final Dialogue dialogue;
    private final Case drawn;
    private final Site site;
    private final Technician technician;
    private final Speech speech;
    private final Tally tally = new Tally();
    private final BiConsumer<String, Turn> listener;
    private final Set<CautionRule> threatened = EnumSet.noneOf(CautionRule.class);
    private final Set<CautionRule> unwarned = EnumSet.noneOf(CautionRule.class);

    private final List<Event> events = new ArrayList<>();
    private final List<String> said = new ArrayList<>();

    private Instant now = MORNING;
    private Turn turn;
    private Optional<Assessment> first = Optional.empty();
    private Assessment untouched;
    private int asked;

    Call(Dialogue dialogue, Case drawn, Level level, BiConsumer<String, Turn> listener) {
        this(dialogue, drawn, level, new Typed(false), listener);
    }

    /** @param listener gets what was said, or the name of the timer in brackets, with what came of it */
    Call(Dialogue dialogue, Case drawn, Level level, Speech speech, BiConsumer<String, Turn> listener) {
        this.speech = speech;
        this.dialogue = dialogue;
        this.drawn = drawn;
        this.site = new Site(drawn);
        this.technician = new Technician(drawn, level, site, speech.calledOut());
        this.listener = listener;
        Event.Started started = new Event.Started(now, SessionSettings.STANDARD);
        this.events.add(started);
        this.turn = dialogue.begin(started);
        this.untouched = turn.state().assessment();
        listener.accept("", turn);
    }

    /** @throws UnknownStepException for a step that the technician does not know */
    Outcome made() {
        for (int turns = 0; turns < MOST_TURNS; turns++) {
            if (!site.runs()) {
                return outcome(Outcome.Ending.STOPPED);
            }
            next();
            if (turn.state().closed()) {
                acts(turn.state());
                return outcome(Outcome.Ending.FINISHED);
            }
        }
        return outcome(Outcome.Ending.ENDLESS);
    }

    private void next() {
        State before = turn.state();
        Expectation expectation = dialogue.expectation(before);
        if (first.isEmpty()
                && before.conversation().pending().isEmpty()
                && (expectation.step().startsWith("clue-") || expectation.step().startsWith("look-"))) {
            asked++;
        }
        if (expectation.step().equals(SETTLE) && before.unheeded().isEmpty()) {
            pass(SETTLING);
            happens("[" + SETTLE + "]", new Event.TimerElapsed(now, SETTLE));
        } else {
            talksToSomebody(expectation);
            answers();
        }
        if (turn.state().told(Judged.CHARGE) && !before.told(Judged.CHARGE)) {
            judged();
        }
    }

    private void answers() {
        State state = turn.state();
        if (!state.closed()) {
            Expectation expectation = dialogue.expectation(state);
            int moves = site.moves();
            String words = technician.answer(state, expectation);
            if (site.moves() > moves) {
                acts(state);
            }
            says(words, expectation, technician.answered());
        }
    }

    /** Refrigerant is moved or the call ended: what stands now was acted on. */
    private void acts(State state) {
        tally.actedOnMisheard += technician.misheard(state).isEmpty() ? 0 : 1;
    }

    private void says(String words, Expectation expectation, Optional<Quantity> value) {
        pass(BREATH);
        int from = events.size();
        Speech.Spoken spoken = speech.say(words, expectation, this::reaches);
        wasSaid(spoken, from, expectation);
        tally.turns++;
        value.ifPresent(quantity -> tell(quantity, spoken.slips()));
    }

    /** The dialogue hears an utterance and tells what it expects now; nothing once the call is over. */
    private Optional<Expectation> reaches(List<Hypothesis> utterance) {
        happens(utterance.get(0).words(), new Event.Heard(now, speech.source(), utterance));
        return turn.state().closed() ? Optional.empty() : Optional.of(dialogue.expectation(turn.state()));
    }

    private void wasSaid(Speech.Spoken spoken, int from, Expectation expectation) {
        said.add(now + "  events from " + (from + 1) + "  " + expectation.step() + ": " + spoken.words());
    }

    /** What is said to somebody else must not be taken; where it was, he takes it back as soon as he hears it. */
    private void talksToSomebody(Expectation expectation) {
        State before = turn.state();
        int from = events.size();
        // the time that it takes passes before any of it is heard
        Optional<Speech.Spoken> aside = speech.aside(expectation, () -> pass(BREATH), this::reaches);
        if (aside.isEmpty()) {
            return;
        }
        wasSaid(aside.get(), from, expectation);
        State after = turn.state();
        tally.asides++;
        boolean taken = !after.sheet().equals(before.sheet());
        boolean obeyed = after.closed()
                || after.held() != before.held()
                || !after.unheeded().equals(before.unheeded());
        boolean doubted = after.conversation().pending().isPresent()
                && !after.conversation().pending().equals(before.conversation().pending());
        tally.asidesTaken += taken || obeyed ? 1 : 0;
        if (!after.closed() && (taken || doubted || after.held())) {
            String takenBack = after.held() ? "carry on" : doubted ? "no" : "scratch that";
            says(takenBack, dialogue.expectation(after), Optional.empty());
        }
    }

    /** Counts what became of a value that answered the question. */
    private void tell(Quantity quantity, boolean slipped) {
        State after = turn.state();
        boolean taken = after.assessment().readings().has(quantity);
        boolean wrong = technician.misheard(after).contains(quantity);
        tally.values++;
        tally.wrong += taken && wrong ? 1 : 0;
        boolean atOnce = taken && !wrong && after.conversation().pending().isEmpty();
        tally.atOnce += atOnce ? 1 : 0;
        tally.slips += slipped ? 1 : 0;
        tally.slipsRight += slipped && atOnce ? 1 : 0;
    }

    /** What became of the words that were spoken. Owned by one thread. */
    static final class Tally {
        int turns;
        int values;
        int atOnce;
        int wrong;
        int wrongAtVerdicts;

        /** How often refrigerant was moved or the call ended while a reading stood otherwise than called out. */
        int actedOnMisheard;

        /** Values that were corrected in the same breath, and those of them that were taken as corrected. */
        int slips;

        int slipsRight;

        /** What was said to somebody else, and how often something came of it. */
        int asides;

        int asidesTaken;
    }

    /** Everything that happened, in order. */
    List<Event> events() {
        return List.copyOf(events);
    }

    /** What was truly said, with its time, the number of the event that it led to first, and the step. */
    List<String> said() {
        return List.copyOf(said);
    }

    Tally tally() {
        return tally;
    }

    private void pass(Duration time) {
        now = now.plus(time);
        site.passes(time);
    }

    private void happens(String what, Event event) {
        events.add(event);
        turn = dialogue.on(turn.state(), event);
        if (site.moves() == 0) {
            untouched = turn.state().assessment();
        }
        listener.accept(what, turn);
    }

    /** A verdict was spoken. */
    private void judged() {
        State state = turn.state();
        tally.wrongAtVerdicts += technician.misheard(state).isEmpty() ? 0 : 1;
        if (first.isEmpty()) {
            first = Optional.of(state.assessment());
        }
        for (CautionRule rule : site.threatens()) {
            threatened.add(rule);
            if (!state.warnings().given().contains(rule)) {
                unwarned.add(rule);
            }
        }
    }

    private Outcome outcome(Outcome.Ending ending) {
        Assessment said = first.orElse(turn.state().assessment());
        return new Outcome(
                drawn,
                said.judgement().map(Judgement::verdict).map(Verdict::kind).orElse(Verdict.Kind.INCOMPLETE),
                recharge(said),
                leader(said),
                leader(untouched),
                amongFirstTwo(untouched),
                asked,
                site.moves(),
                site.wrongOunces(),
                site.recharged(),
                site.charge(),
                threatened,
                unwarned,
                ending);
    }

    private boolean amongFirstTwo(Assessment assessment) {
        return assessment
                .diagnosis()
                .filter(found -> found.suspects().stream()
                        .limit(2)
                        .anyMatch(suspect -> suspect.fault() == drawn.truth().suspect()))
                .isPresent();
    }

    private static boolean recharge(Assessment assessment) {
        return assessment.verdict().equals(Optional.of(Verdict.Kind.NO_VALID_TEST))
                && assessment.reservation().isPresent();
    }

    private static Fault leader(Assessment assessment) {
        return assessment.diagnosis().map(found -> found.leader().fault()).orElse(Fault.NONE);
    }
}
