package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.assistant.dialogue.outcome.JudgementMessages;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * The pure function of a session: a state and an event give a new state and effects. The same events always give the
 * same states, effects and outcomes; an instance holds only the immutable grammar and checklists and may be shared.
 */
public final class Dialogue {

    private final Flow flow;
    private final Waiting waiting;
    private final Closing closing;
    private final Answers answers;
    private final Grounding grounding;
    private final Progress progress;
    private final ProbeTalk probes;

    public Dialogue(Grammar grammar, Checklists checklists) {
        this.flow = new Flow(checklists);
        this.waiting = new Waiting(flow);
        this.closing = new Closing(flow);
        this.answers = new Answers(flow);
        Doubts doubts = new Doubts(flow);
        Intake intake = new Intake(flow, waiting, doubts);
        this.probes = new ProbeTalk(flow, intake);
        JobStack jobs = new JobStack(flow, closing);
        Orders orders = new Orders(flow, intake, waiting, closing, answers, probes, jobs);
        ChoiceTalk choices = new ChoiceTalk(flow, intake, waiting, answers, orders, jobs);
        this.grounding = new Grounding(grammar, flow, doubts, intake, answers, orders, choices, probes);
        this.progress = new Progress(flow, waiting, jobs);
    }

    /** The first turn of a session. */
    public Turn begin(Event.Started started) {
        Draft draft = new Draft(State.opened(started));
        draft.understoodAs(Understood.Occurrence.STARTED);
        draft.say(Message.of("greeting"));
        settings(draft, started.settings());
        return proceed(draft);
    }

    private static void settings(Draft draft, SessionSettings settings) {
        settings.refrigerant()
                .ifPresent(designation -> draft.become(draft.sheet()
                        .with(Slots.REFRIGERANT, new Answer.Option(draft.state().at(), designation))));
        for (Reading known : settings.known()) {
            // "scratch that" means what the technician said
            draft.become(draft.sheet()
                    .passed(
                            Slot.of(known.quantity()),
                            new Answer.Value(draft.state().at(), known, false)));
        }
        if (!settings.known().isEmpty()) {
            List<Fact> stated = settings.known().stream().map(Altitudes::stated).toList();
            draft.say(Message.of("settings.known").with("values", new Fact.Listing(stated)));
        }
    }

    /** The turn that an event leads to. A closed session stays as it is. */
    public Turn on(State state, Event event) {
        Draft draft = new Draft(state.at(event.at()));
        if (state.closed()) {
            draft.understoodAs(new Understood.Ignored(Decision.Ignorance.CLOSED));
            return draft.turn(Optional.empty());
        }
        return event.fold(new Event.Cases<>() {
            @Override
            public Turn started(Event.Started started) {
                throw new IllegalArgumentException("a session starts once only: " + started);
            }

            @Override
            public Turn heard(Event.Heard heard) {
                return grounding.heard(draft, heard, NoInputTimeout.away(state, heard.at()))
                        ? proceed(draft)
                        : rest(draft);
            }

            @Override
            public Turn timerElapsed(Event.TimerElapsed elapsed) {
                return elapsed.timer().equals(Event.SILENCE) ? silence(draft) : elapsed(draft, elapsed.timer());
            }

            @Override
            public Turn deviceLost(Event.DeviceLost lost) {
                draft.understoodAs(Understood.Occurrence.DEVICE_LOST);
                draft.say(
                        lost.device().equals(Event.RECORD)
                                ? Message.of("record.lost")
                                : Message.of("device.lost").with("device", new Fact.Term("device." + lost.device())));
                return draft.turn(Optional.of(listen(draft)));
            }

            @Override
            public Turn deviceFound(Event.DeviceFound found) {
                draft.understoodAs(Understood.Occurrence.DEVICE_FOUND);
                draft.say(
                        found.device().equals(Event.RECORD)
                                ? Message.of("record.found")
                                : Message.of("device.found").with("device", new Fact.Term("device." + found.device())));
                return proceed(draft);
            }

            @Override
            public Turn clockChanged(Event.ClockChanged changed) {
                draft.understoodAs(new Understood.ClockChanged(changed.by()));
                draft.say(Message.of(changed.by().isNegative() ? "clock.back" : "clock.forward")
                        .with("minutes", Waiting.minutes(changed.by().abs())));
                return draft.turn(Optional.of(listen(draft)));
            }

            @Override
            public Turn measured(Event.Measured measured) {
                draft.understoodAs(Understood.Occurrence.MEASURED);
                Expectation before = flow.expectation(draft.state());
                probes.measured(draft, measured.reports());
                return draft.turn(Optional.of(listen(draft))
                        .filter(listen -> !listen.expectation().equals(before)));
            }

            @Override
            public Turn resumed(Event.Resumed resumed) {
                draft.understoodAs(Understood.Occurrence.RESUMED);
                draft.become(draft.state().with(draft.state().probes().forgotten()));
                draft.say(answers.whereWeAre(draft.state()));
                waiting.resumed(draft);
                return proceed(draft);
            }

            @Override
            public Turn ended(Event.Ended ended) {
                draft.understoodAs(Understood.Occurrence.ENDED);
                closing.close(draft);
                return draft.turn(Optional.empty());
            }
        });
    }

    /** The charge verdict in this state in words, then why it is what it is; empty while there is none. */
    public List<Message> explained(State state) {
        Assessment assessment = state.assessment();
        UnitSetting units = state.settings().units();
        List<Message> messages = new ArrayList<>();
        assessment.announcement(Judged.CHARGE).ifPresent(announcement -> {
            messages.addAll(announcement.messages());
            assessment
                    .judgement()
                    .ifPresent(judgement -> messages.addAll(
                            new JudgementMessages(units).why(judgement, assessment.diagnosis(), List.of())));
        });
        return messages;
    }

    /** What words mean in this state. */
    public Expectation expectation(State state) {
        return flow.expectation(state);
    }

    /** The question is asked again, then once more with where the work stands; after that nobody is nagged. */
    private Turn silence(Draft draft) {
        draft.understoodAs(Understood.Occurrence.SILENCE);
        if (NoInputTimeout.of(draft.state()).isEmpty()) {
            return draft.turn(Optional.of(listen(draft)));
        }
        if (draft.conversation().silences() == 0) {
            draft.say(Message.of("silence"));
        } else {
            draft.say(answers.whereWeAre(draft.state()));
        }
        draft.become(draft.conversation().silentAgain());
        return proceed(draft);
    }

    private Turn elapsed(Draft draft, String timer) {
        draft.understoodAs(new Understood.Elapsed(timer));
        if (draft.state().held()) {
            waiting.elapsed(draft, timer);
            return draft.turn(Optional.of(listen(draft)));
        }
        boolean before = draft.state().waits().containsKey(timer);
        boolean known = waiting.elapsed(draft, timer);
        boolean over = before && !draft.state().waits().containsKey(timer);
        return known && over ? proceed(draft) : draft.turn(Optional.of(listen(draft)));
    }

    /** Cautions first, then our own question, then the verdict if it is due, then the next step. */
    private Turn proceed(Draft draft) {
        waiting.giveUp(draft);
        draft.give(CautionNotice.measured(
                draft.assessment().cautions(), draft.state().warnings()));
        if (draft.state().held()) {
            return draft.turn(Optional.of(listen(draft)));
        }
        Optional<Pending> pending = draft.conversation().pending();
        if (pending.isPresent()) {
            draft.say(pending.get().question());
        } else if (!draft.state().warnings().unheeded().isEmpty()) {
            draft.say(Message.of("caution.heed"));
        } else {
            progress.advance(draft);
        }
        return rest(draft);
    }

    /** Nothing more is said: it listens, unless the session is over. */
    private Turn rest(Draft draft) {
        return draft.turn(draft.state().closed() ? Optional.empty() : Optional.of(listen(draft)));
    }

    private Effect.Listen listen(Draft draft) {
        return new Effect.Listen(flow.expectation(draft.state()), NoInputTimeout.of(draft.state()));
    }
}
