package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.assistant.dialogue.outcome.JudgementMessages;
import readback.calc.plausibility.Grade;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.LateDecimals;
import readback.grammar.Meaning;
import readback.grammar.Prior;
import readback.grammar.Reason;
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

    /** After so many failures in a row another way to answer is offered. */
    private static final int FAILURES_BEFORE_ANOTHER_WAY = 3;

    /** Shorter than any question takes to be said and answered. */
    private static final Duration ONE_BREATH = Duration.ofSeconds(2);

    private static final Grade.Cases<Prior.Grade> PRIOR = new Grade.Cases<>() {
        @Override
        public Prior.Grade typical(Grade.Typical typical) {
            return Prior.Grade.TYPICAL;
        }

        @Override
        public Prior.Grade unusual(Grade.Unusual unusual) {
            return Prior.Grade.UNUSUAL;
        }

        @Override
        public Prior.Grade impossible(Grade.Impossible impossible) {
            return Prior.Grade.IMPOSSIBLE;
        }
    };

    private final Grammar grammar;
    private final Flow flow;
    private final Waiting waiting;
    private final Doubts doubts;
    private final Intake intake;
    private final Closing closing;
    private final Answers answers;
    private final Orders orders;
    private final Progress progress;
    private final ProbeTalk probes;

    public Dialogue(Grammar grammar, Checklists checklists) {
        this.grammar = grammar;
        this.flow = new Flow(checklists);
        this.waiting = new Waiting(flow);
        this.doubts = new Doubts(flow);
        this.intake = new Intake(flow, waiting, doubts);
        this.closing = new Closing(flow);
        this.answers = new Answers(flow);
        this.probes = new ProbeTalk(flow, intake);
        this.orders = new Orders(flow, intake, waiting, closing, answers, probes);
        this.progress = new Progress(flow, waiting, orders);
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
                return Dialogue.this.heard(draft, heard, NoInputTimeout.away(state, heard.at()));
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

    private Turn heard(Draft draft, Event.Heard heard, boolean away) {
        Assessment known = draft.assessment();
        List<Hypothesis> hypotheses = heard.hypotheses();
        double sinceTalk = draft.conversation().secondsSinceTalk(heard);
        Decision weighed = grammar.decide(hypotheses, flow.expectation(draft.state()), prior(known), sinceTalk);
        Decision decision = lateDecimals(draft, weighed, heard).orElse(weighed);
        draft.become(draft.conversation().spokenTo(talkAfter(draft, decision, heard)));
        Optional<Emergency> emergency = decision.accepted()
                .map(Decision.Accept::meaning)
                .flatMap(Emergency::in)
                .filter(cried -> !orders.asksForLeaks(draft, cried));
        if (emergency.isPresent()) {
            draft.understoodAs(
                    new Understood.Meant(decision.accepted().orElseThrow().meaning()));
            return alarmed(draft, emergency.get());
        }
        if (draft.state().held()) {
            return held(draft, decision, heard.source());
        }
        return decision.fold(new Decision.Cases<>() {
            @Override
            public Turn accept(Decision.Accept accept) {
                return accepted(draft, accept, away);
            }

            @Override
            public Turn askBetween(Decision.AskBetween between) {
                draft.understoodAs(new Understood.Between(between.candidates()));
                return between(draft, between);
            }

            @Override
            public Turn askAgain(Decision.AskAgain again) {
                draft.understoodAs(new Understood.Meant(again.reason()));
                return again(draft, again.reason());
            }

            @Override
            public Turn ignore(Decision.Ignore ignore) {
                draft.understoodAs(new Understood.Ignored(ignore.why()));
                return draft.turn(Optional.of(listen(draft)));
            }
        });
    }

    /**
     * Decimals behind the value that was said last, taken or in doubt, where they make no ordinary value of what was
     * asked next, or came before anybody can have heard the next question: they correct it.
     */
    private static Optional<Decision> lateDecimals(Draft draft, Decision weighed, Event.Heard heard) {
        Optional<Decision.Accept> accepted = weighed.accepted();
        boolean ordinary = accepted.stream()
                .flatMap(accept -> accept.meaning().readings().stream())
                .map(draft.assessment()::grade)
                .anyMatch(Grade.Typical.class::isInstance);
        boolean inOneBreath = inOneBreath(draft, heard);
        Optional<Hypothesis> best = heard.hypotheses().stream().findFirst();
        Optional<Reading> saidLast = draft.conversation()
                .pending()
                .flatMap(Pending::doubted)
                .or(() -> draft.sheet().lastReading());
        if (best.isEmpty() || saidLast.isEmpty() || (ordinary && !inOneBreath) || weighed.ignored()) {
            return Optional.empty();
        }
        if (inOneBreath) {
            return LateDecimals.inOneBreath(best.get(), saidLast.get()).map(Decision.class::cast);
        }
        boolean doubtful = accepted.map(Decision.Accept::doubtful).orElse(true);
        double confidence = accepted.map(Decision.Accept::confidence).orElse(0.0);
        return LateDecimals.of(best.get().words(), saidLast.get())
                .map(whole -> new Decision.Accept(new Meaning.Correction(List.of(whole)), confidence, doubtful));
    }

    /** Whether it was spoken so soon behind the value that was taken last that it answers no further question. */
    private static boolean inOneBreath(Draft draft, Event.Heard heard) {
        return heard.source() == Event.Source.VOICE
                && draft.sheet()
                        .last()
                        .flatMap(History.Edit::after)
                        .filter(given ->
                                Duration.between(given.at(), heard.at()).compareTo(ONE_BREATH) <= 0)
                        .isPresent();
    }

    /** What to do is said; nothing else is until "carry on". */
    private Turn alarmed(Draft draft, Emergency emergency) {
        draft.become(draft.conversation().in(Conversation.Mode.HELD));
        draft.say(emergency.told());
        draft.say(Message.of("emergency.over"));
        return draft.turn(Optional.of(listen(draft)));
    }

    /** When talk of others was heard last: now, or as before where a number was too unclear to tell. */
    private static Optional<Instant> talkAfter(Draft draft, Decision decision, Event.Heard heard) {
        boolean unclear = decision instanceof Decision.AskAgain again && again.numberUnclear();
        return unclear ? draft.conversation().talk() : decision.ignored() ? Optional.of(heard.at()) : Optional.empty();
    }

    private Turn accepted(Draft draft, Decision.Accept accept, boolean away) {
        draft.understoodAs(new Understood.Meant(accept.meaning()));
        accept(draft, accept.meaning(), accept.doubtful());
        if (draft.state().closed()) {
            return draft.turn(Optional.empty());
        }
        if (away && !draft.state().held()) {
            draft.say(answers.whereWeAre(draft.state()));
        }
        return proceed(draft);
    }

    private static Prior prior(Assessment known) {
        return new Prior() {
            @Override
            public Prior.Grade of(Reading reading) {
                return known.grade(reading).fold(PRIOR);
            }

            @Override
            public boolean stands(Reading reading) {
                return known.readings()
                        .find(reading.quantity())
                        .filter(there -> there.base() == reading.base())
                        .isPresent();
            }
        };
    }

    /**
     * While held only "carry on" is acted on. Whatever else is typed or was said to us is told that it waits, and
     * nothing is taken; what to do in an emergency is answered.
     */
    private Turn held(Draft draft, Decision decision, Event.Source source) {
        Optional<Meaning> accepted = decision.accepted().map(Decision.Accept::meaning);
        if (accepted.isPresent() && accepted.get().orders(Command.CARRY_ON)) {
            draft.understoodAs(new Understood.Meant(accepted.get()));
            draft.become(draft.conversation().in(Conversation.Mode.LISTENING));
            draft.say(Message.of("held.over"));
            return proceed(draft);
        }
        Optional<Emergency> asked = accepted.flatMap(Emergency::askedIn);
        draft.understoodAs(
                asked.isPresent() ? new Understood.Meant(accepted.orElseThrow()) : Understood.Occurrence.HELD);
        asked.map(Emergency::told).ifPresent(draft::say);
        boolean again = asked.isPresent()
                || accepted.filter(meaning -> meaning.orders(Command.HOLD_ON)).isPresent();
        if (!decision.ignored() || source == Event.Source.KEYS) {
            draft.say(Message.of(again ? "held" : "held.first"));
        }
        return draft.turn(Optional.of(listen(draft)));
    }

    private void accept(Draft draft, Meaning meaning, boolean doubtful) {
        if (doubtful && meaning.order().filter(Orders::weighty).isPresent()) {
            complain(draft, Meaning.NotUnderstood.of(Reason.Kind.UNSURE));
            return;
        }
        draft.become(draft.conversation().understood());
        Optional<Pending> pending = draft.conversation().pending();
        if (pending.isPresent() && intake.answered(draft, pending.get(), meaning)) {
            return;
        }
        meaning.fold(taking(draft, doubtful)).run();
    }

    /** What is done about a meaning that answers no question of the dialogue's own. */
    private Meaning.Cases<Runnable> taking(Draft draft, boolean doubtful) {
        return new Meaning.Cases<>() {
            @Override
            public Runnable values(Meaning.Values values) {
                return () -> intake.values(draft, values.readings(), doubtful, false);
            }

            @Override
            public Runnable correction(Meaning.Correction correction) {
                return () -> intake.values(draft, correction.readings(), doubtful, true);
            }

            @Override
            public Runnable choice(Meaning.Choice choice) {
                return () -> {
                    if (doubtful && Situations.Told.in(choice).isPresent()) {
                        complain(draft, Meaning.NotUnderstood.of(Reason.Kind.UNSURE));
                    } else {
                        orders.choose(draft, choice);
                    }
                };
            }

            @Override
            public Runnable choices(Meaning.Choices choices) {
                return () -> choices.choices().forEach(choice -> orders.choose(draft, choice));
            }

            @Override
            public Runnable ordered(Meaning.Ordered ordered) {
                return () -> orders.carryOut(draft, ordered);
            }

            @Override
            public Runnable note(Meaning.Note note) {
                return () -> draft.say(Message.of("note.kept").with("words", new Fact.Quoted(note.words())));
            }

            @Override
            public Runnable saturationQuestion(Meaning.SaturationQuestion question) {
                return () -> orders.saturation(draft, question.pressure());
            }

            @Override
            public Runnable probeNamed(Meaning.ProbeNamed named) {
                return () -> {
                    if (doubtful) {
                        complain(draft, Meaning.NotUnderstood.of(Reason.Kind.UNSURE));
                    } else {
                        probes.named(draft, named);
                    }
                };
            }

            @Override
            public Runnable mentioned(Meaning.Mentioned mentioned) {
                return () -> {
                    if (doubtful) {
                        complain(draft, Meaning.NotUnderstood.of(Reason.Kind.UNSURE));
                    } else {
                        orders.mentioned(draft, mentioned.of());
                    }
                };
            }

            @Override
            public Runnable notUnderstood(Meaning.NotUnderstood reason) {
                return () -> complain(draft, reason);
            }
        };
    }

    private Turn between(Draft draft, Decision.AskBetween between) {
        List<Reading> candidates = between.candidates().stream()
                .flatMap(meaning -> meaning.readings().stream())
                .distinct()
                .toList();
        if (candidates.size() < 2) {
            return again(draft, Meaning.NotUnderstood.of(Reason.Kind.UNSURE));
        }
        if (candidates.get(0).quantity() != candidates.get(1).quantity()) {
            draft.become(draft.conversation().failedAgain());
            draft.say(Message.of("again.which-quantity")
                    .with("first", Fact.name(candidates.get(0).quantity()))
                    .with("second", Fact.name(candidates.get(1).quantity())));
            return proceed(draft);
        }
        Message question = Message.of("confirm.between")
                .with("name", Fact.name(candidates.get(0).quantity()))
                .with("first", Fact.amount(candidates.get(0)))
                .with("second", Fact.amount(candidates.get(1)));
        List<Pending> questions = doubts.stillOpen(draft, candidates, 0);
        questions.add(0, Pending.Between.of(candidates, question));
        draft.become(draft.conversation().questioning(questions));
        return proceed(draft);
    }

    private Turn again(Draft draft, Meaning.NotUnderstood reason) {
        complain(draft, reason);
        return proceed(draft);
    }

    private void complain(Draft draft, Meaning.NotUnderstood reason) {
        draft.become(draft.conversation().failedAgain());
        doubts.failed(draft);
        draft.say(
                reason.why().kind() == Reason.Kind.UNSURE
                        ? Message.of("again.plain")
                        : Message.of("again.reason").with("why", new Fact.Text(ReasonMessage.of(reason.why()))));
        if (draft.conversation().failures() >= FAILURES_BEFORE_ANOTHER_WAY) {
            draft.say(Message.of("again.another-way"));
        }
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
        return draft.turn(draft.state().closed() ? Optional.empty() : Optional.of(listen(draft)));
    }

    private Effect.Listen listen(Draft draft) {
        return new Effect.Listen(flow.expectation(draft.state()), NoInputTimeout.of(draft.state()));
    }
}
