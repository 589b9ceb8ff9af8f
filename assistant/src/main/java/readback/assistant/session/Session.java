package readback.assistant.session;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Effect;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;
import readback.assistant.sound.Samples;
import readback.grammar.Expectation;
import readback.prompts.text.Message;
import readback.prompts.text.Wording;

/** Runs the dialogue over events as they come: records each, then carries out what it led to. Owned by one thread. */
public final class Session {

    private final Dialogue dialogue;
    private final Wording wording;
    private final SessionRecord record;
    private final List<Audience> audiences;
    private State state;
    private Expectation expectation;
    private int events;
    private boolean recordLost;

    private Session(
            Dialogue dialogue,
            Wording wording,
            SessionRecord record,
            List<Audience> audiences,
            State state,
            int events) {
        this.dialogue = dialogue;
        this.wording = wording;
        this.record = record;
        this.audiences = List.copyOf(audiences);
        this.state = state;
        this.expectation = dialogue.expectation(state);
        this.events = events;
    }

    /** Opens a session: greets and asks the first question. */
    public static Session open(
            Dialogue dialogue,
            Wording wording,
            SessionRecord record,
            List<Audience> audiences,
            SessionSettings settings,
            Instant now) {
        Event.Started started = new Event.Started(now, settings);
        Turn first = dialogue.begin(started);
        Session session = new Session(dialogue, wording, record, audiences, first.state(), 0);
        session.take(started, first);
        return session;
    }

    /**
     * Goes on with a session that was left without an end: brings the dialogue to where it was, then says where that
     * is.
     *
     * @throws IllegalArgumentException when the recorded session was already closed
     */
    public static Session resume(
            Dialogue dialogue,
            Wording wording,
            SessionRecord.Resumption resumption,
            List<Audience> audiences,
            Instant now) {
        List<Event> recorded =
                resumption.session().entries().stream().map(Entry::event).toList();
        if (recorded.isEmpty() || !(recorded.get(0) instanceof Event.Started started)) {
            throw new IllegalArgumentException("a session begins with its start");
        }
        State state = dialogue.begin(started).state();
        for (Event event : recorded.subList(1, recorded.size())) {
            state = dialogue.on(state, event).state();
        }
        if (state.closed()) {
            throw new IllegalArgumentException("the session is closed");
        }
        Session session = new Session(dialogue, wording, resumption.record(), audiences, state, recorded.size());
        session.on(new Event.Resumed(now));
        return session;
    }

    /** By how much the device's clock was set while the session was recorded, positive when forward. */
    public static Duration clockChanges(RecordedSession recorded) {
        return recorded.entries().stream()
                .map(Entry::event)
                .filter(Event.ClockChanged.class::isInstance)
                .map(event -> ((Event.ClockChanged) event).by())
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** Takes an event, records it and does what follows. Events after the end are ignored. */
    public void on(Event event) {
        if (state.closed()) {
            return;
        }
        Turn turn = dialogue.on(state, event);
        state = turn.state();
        take(event, turn);
    }

    /**
     * Takes what was heard together with its sound, which is kept as far as the record's budget allows.
     *
     * @return why the sound was not kept; empty when it was
     */
    public Optional<String> on(Event.Heard heard, Samples sound) {
        if (state.closed()) {
            return Optional.empty();
        }
        Optional<String> refused = record.keepAudio(events + 1, sound);
        on(heard);
        return refused;
    }

    /** What would be said if the event happened now. Nothing changes: so a voice can be ready before it is needed. */
    public List<Line> foreseen(Event event) {
        return state.closed() ? List.of() : Line.of(dialogue.on(state, event), wording);
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
        return state.assessment();
    }

    public boolean closed() {
        return state.closed();
    }

    private void take(Event event, Turn turn) {
        List<Line> lines = Line.of(turn, wording);
        Optional<Event> disk = keep(event, turn, lines);
        carryOut(event, turn, state.closed() ? with(kept(), lines) : lines);
        disk.ifPresent(this::on);
    }

    /** Whether the record of a session that has ended is on disk: nobody can say so before its last line is. */
    private Message kept() {
        return Message.of(recordLost ? "record.not-kept" : "record.kept");
    }

    private List<Line> with(Message last, List<Line> lines) {
        List<Line> all = new ArrayList<>(lines);
        all.add(Line.of(last, state, wording));
        return all;
    }

    /** Records the turn; the loss or the return of the disk is an event that follows. */
    private Optional<Event> keep(Event event, Turn turn, List<Line> lines) {
        events++;
        List<String> shown = lines.stream().map(Line::shown).toList();
        List<String> spoken = lines.stream()
                .map(Line::spoken)
                .filter(words -> !words.isEmpty())
                .toList();
        Optional<String> trouble = record.append(Entry.of(events, event, turn, shown, spoken));
        if (trouble.isPresent() == recordLost) {
            return Optional.empty();
        }
        recordLost = trouble.isPresent();
        return Optional.of(
                recordLost
                        ? new Event.DeviceLost(event.at(), Event.RECORD)
                        : new Event.DeviceFound(event.at(), Event.RECORD));
    }

    private void carryOut(Event event, Turn turn, List<Line> lines) {
        audiences.forEach(audience -> audience.happened(event, turn));
        turn.effects().forEach(effect -> effect.performedBy(new Performer(lines)));
    }

    /** Carries effects out before the audiences. */
    private final class Performer implements Effect.Performer {

        private final List<Line> lines;

        Performer(List<Line> lines) {
            this.lines = lines;
        }

        @Override
        public void say(Effect.Say say) {
            audiences.forEach(audience -> audience.says(lines));
        }

        @Override
        public void hush(Effect.Hush hush) {
            audiences.forEach(Audience::hush);
        }

        @Override
        public void listen(Effect.Listen listen) {
            expectation = listen.expectation();
        }

        @Override
        public void startTimer(Effect.StartTimer start) {
            // belongs to whoever has a clock: an audience of live sessions
        }

        @Override
        public void stopTimer(Effect.StopTimer stop) {
            // as above
        }

        @Override
        public void close(Effect.Close close) {
            audiences.forEach(Audience::closed);
        }
    }
}
