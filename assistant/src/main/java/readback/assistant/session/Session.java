package readback.assistant.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Effect;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Settings;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;
import readback.assistant.record.SessionRecord;
import readback.grammar.Expectation;
import readback.prompts.text.Message;
import readback.prompts.text.Wording;

/**
 * Runs the dialogue over events as they come: records each, then carries out what it led to. Owned by one thread.
 */
public final class Session {

    /** What the dialogue calls the record when it cannot be written. */
    private static final String RECORD_DEVICE = "record on disk";

    private final Dialogue dialogue;
    private final Wording wording;
    private final SessionRecord record;
    private final List<Audience> audiences;
    private final Settings settings;
    private State state;
    private Expectation expectation;
    private int events;
    private boolean recordLost;

    private Session(
            Dialogue dialogue, Wording wording, SessionRecord record, List<Audience> audiences, Event.Started started) {
        this.dialogue = dialogue;
        this.wording = wording;
        this.record = record;
        this.audiences = List.copyOf(audiences);
        this.settings = started.settings();
        Turn first = dialogue.begin(started);
        this.state = first.state();
        this.expectation = dialogue.expectation(first.state());
        keep(started, first);
        carryOut(started, first);
    }

    /** Opens a session: greets and asks the first question. */
    public static Session open(
            Dialogue dialogue,
            Wording wording,
            SessionRecord record,
            List<Audience> audiences,
            Settings settings,
            Instant now) {
        return new Session(dialogue, wording, record, audiences, new Event.Started(now, settings));
    }

    /** Takes an event, records it and does what follows. Events after the end are ignored. */
    public void on(Event event) {
        if (state.closed()) {
            return;
        }
        Turn turn = dialogue.on(state, event);
        state = turn.state();
        keep(event, turn);
        carryOut(event, turn);
    }

    /** What would be said if the event happened now. Nothing changes: so a voice can be ready before it is needed. */
    public List<Line> foreseen(Event event) {
        return state.closed() ? List.of() : lines(dialogue.on(state, event));
    }

    /** What is being listened for. */
    public Expectation expectation() {
        return expectation;
    }

    public State state() {
        return state;
    }

    /** What the state knows, judged. */
    public Assessment assessment() {
        return dialogue.assessment(state);
    }

    public boolean closed() {
        return state.closed();
    }

    private void keep(Event event, Turn turn) {
        events++;
        List<String> shown = lines(turn).stream().map(Line::shown).toList();
        Optional<String> trouble = record.append(new Entry(events, event, turn.outcome(), shown));
        if (trouble.isPresent() && !recordLost) {
            recordLost = true;
            on(new Event.DeviceLost(event.at(), RECORD_DEVICE));
        } else if (trouble.isEmpty() && recordLost) {
            recordLost = false;
            on(new Event.DeviceFound(event.at(), RECORD_DEVICE));
        }
    }

    private void carryOut(Event event, Turn turn) {
        audiences.forEach(audience -> audience.happened(event, turn));
        for (Effect effect : turn.effects()) {
            if (effect instanceof Effect.Say) {
                List<Line> lines = lines(turn);
                audiences.forEach(audience -> audience.says(lines));
            } else if (effect instanceof Effect.Hush) {
                audiences.forEach(Audience::hush);
            } else if (effect instanceof Effect.Listen listen) {
                expectation = listen.expectation();
            } else if (effect instanceof Effect.Close) {
                audiences.forEach(Audience::closed);
            }
        }
    }

    private List<Line> lines(Turn turn) {
        boolean brief = turn.state().brief();
        List<Line> lines = new ArrayList<>();
        for (Effect effect : turn.effects()) {
            if (effect instanceof Effect.Say say) {
                for (Message message : say.messages()) {
                    String spoken =
                            wording.silent(message, brief) ? "" : wording.spoken(message, brief, settings.units());
                    lines.add(new Line(message, spoken, wording.shown(message, settings.units())));
                }
            }
        }
        return lines;
    }
}
