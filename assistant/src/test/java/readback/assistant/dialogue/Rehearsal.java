package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;
import readback.prompts.text.Message;
import readback.prompts.text.Wording;

/** A technician of tests: says things to a real dialogue and keeps what came back. */
final class Rehearsal {

    static final Wording WORDING = Language.english().wording();
    static final Grammar GRAMMAR = Grammar.standard();
    static final Dialogue DIALOGUE = new Dialogue(GRAMMAR, Checklists.standard());
    private static final Instant MORNING = Instant.parse("2026-07-14T09:00:00Z");
    private static final Duration BREATH = Duration.ofSeconds(5);

    private final SessionSettings settings;
    private final List<Event> events = new ArrayList<>();
    private Instant now = MORNING;
    private Turn last;

    Rehearsal(SessionSettings settings) {
        this.settings = settings;
        Event.Started started = new Event.Started(now, settings);
        events.add(started);
        last = DIALOGUE.begin(started);
    }

    Rehearsal() {
        this(SessionSettings.STANDARD);
    }

    /** Types each line. */
    Rehearsal says(String... lines) {
        for (String line : lines) {
            hears(Hypothesis.typed(line));
        }
        return this;
    }

    /** The recogniser offers these, likeliest first. */
    Rehearsal hears(Hypothesis... alternatives) {
        boolean typed = Arrays.stream(alternatives).allMatch(each -> each.confidence() == 1);
        now = now.plus(BREATH);
        return happens(new Event.Heard(now, typed ? Event.Source.KEYS : Event.Source.VOICE, List.of(alternatives)));
    }

    /** The same, in the breath of what was said before. */
    Rehearsal hearsAtOnce(Hypothesis... alternatives) {
        return happens(new Event.Heard(now, Event.Source.VOICE, List.of(alternatives)));
    }

    Rehearsal passes(Duration time) {
        now = now.plus(time);
        return this;
    }

    Rehearsal happens(Event event) {
        events.add(event);
        last = DIALOGUE.on(last.state(), event);
        return this;
    }

    Instant now() {
        return now;
    }

    Turn turn() {
        return last;
    }

    State state() {
        return last.state();
    }

    Assessment assessment() {
        return state().assessment();
    }

    List<Event> events() {
        return List.copyOf(events);
    }

    List<Message> messages() {
        return last.effects().stream()
                .filter(Effect.Say.class::isInstance)
                .flatMap(effect -> ((Effect.Say) effect).messages().stream())
                .toList();
    }

    /** Keys of what was said in answer to the last event. */
    List<String> keys() {
        return messages().stream().map(Message::key).toList();
    }

    String shown() {
        return String.join(
                " ",
                messages().stream().map(each -> WORDING.shown(each, units())).toList());
    }

    List<String> spoken() {
        return messages().stream()
                .filter(each -> !WORDING.silent(each, state().brief()))
                .map(each -> WORDING.spoken(each, state().brief(), units()))
                .toList();
    }

    private UnitSetting units() {
        return settings.units();
    }
}
