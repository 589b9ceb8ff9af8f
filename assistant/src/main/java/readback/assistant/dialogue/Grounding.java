package readback.assistant.dialogue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Meaning;
import readback.grammar.Reason;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * What becomes of words: taken, asked between, asked again, passed over. While held only "carry on" is acted on; a cry
 * for help comes before everything.
 */
final class Grounding {

    /** After so many failures in a row another way to answer is offered. */
    private static final int FAILURES_BEFORE_ANOTHER_WAY = 3;

    private final Grammar grammar;
    private final Flow flow;
    private final Doubts doubts;
    private final Intake intake;
    private final Answers answers;
    private final Orders orders;
    private final ChoiceTalk choices;
    private final ProbeTalk probes;

    Grounding(
            Grammar grammar,
            Flow flow,
            Doubts doubts,
            Intake intake,
            Answers answers,
            Orders orders,
            ChoiceTalk choices,
            ProbeTalk probes) {
        this.grammar = grammar;
        this.flow = flow;
        this.doubts = doubts;
        this.intake = intake;
        this.answers = answers;
        this.orders = orders;
        this.choices = choices;
        this.probes = probes;
    }

    /**
     * Weighs what was heard and does what it asks for.
     *
     * @param away whether nobody had answered for long
     * @return whether the dialogue goes on to what it asks next; else it only listens
     */
    boolean heard(Draft draft, Event.Heard heard, boolean away) {
        List<Hypothesis> hypotheses = heard.hypotheses();
        double sinceTalk = draft.conversation().secondsSinceTalk(heard);
        Expectation expectation = flow.expectation(draft.state());
        Decision weighed = grammar.decide(hypotheses, expectation, AssessedPrior.of(draft.assessment()), sinceTalk);
        Decision decision =
                LateCorrection.of(draft, weighed, heard, grammar, expectation).orElse(weighed);
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
            public Boolean accept(Decision.Accept accept) {
                return accepted(draft, accept, away);
            }

            @Override
            public Boolean askBetween(Decision.AskBetween between) {
                draft.understoodAs(new Understood.Between(between.candidates()));
                return between(draft, between);
            }

            @Override
            public Boolean askAgain(Decision.AskAgain again) {
                draft.understoodAs(new Understood.Meant(again.reason()));
                return again(draft, again.reason());
            }

            @Override
            public Boolean ignore(Decision.Ignore ignore) {
                draft.understoodAs(new Understood.Ignored(ignore.why()));
                return false;
            }
        });
    }

    /** What to do is said; nothing else is until "carry on". */
    private static boolean alarmed(Draft draft, Emergency emergency) {
        draft.become(draft.conversation().in(Conversation.Mode.HELD));
        draft.say(emergency.told());
        draft.say(Message.of("emergency.over"));
        return false;
    }

    /** When talk of others was heard last: now, or as before where a number was too unclear to tell. */
    private static Optional<Instant> talkAfter(Draft draft, Decision decision, Event.Heard heard) {
        boolean unclear = decision instanceof Decision.AskAgain again && again.numberUnclear();
        return unclear ? draft.conversation().talk() : decision.ignored() ? Optional.of(heard.at()) : Optional.empty();
    }

    private boolean accepted(Draft draft, Decision.Accept accept, boolean away) {
        draft.understoodAs(new Understood.Meant(accept.meaning()));
        accept(draft, accept.meaning(), accept.doubtful());
        if (draft.state().closed()) {
            return false;
        }
        if (away && !draft.state().held()) {
            draft.say(answers.whereWeAre(draft.state()));
        }
        return true;
    }

    /**
     * While held only "carry on" is acted on. Whatever else is typed or was said to us is told that it waits, and
     * nothing is taken; what to do in an emergency is answered.
     */
    private static boolean held(Draft draft, Decision decision, Event.Source source) {
        Optional<Meaning> accepted = decision.accepted().map(Decision.Accept::meaning);
        if (accepted.isPresent() && accepted.get().orders(Command.CARRY_ON)) {
            draft.understoodAs(new Understood.Meant(accepted.get()));
            draft.become(draft.conversation().in(Conversation.Mode.LISTENING));
            draft.say(Message.of("held.over"));
            return true;
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
        return false;
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
                        choices.choose(draft, choice);
                    }
                };
            }

            @Override
            public Runnable choices(Meaning.Choices several) {
                return () -> several.choices().forEach(choice -> choices.choose(draft, choice));
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
                return () -> draft.say(Answers.saturation(draft.state(), question.pressure()));
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
                        choices.mentioned(draft, mentioned.of());
                    }
                };
            }

            @Override
            public Runnable notUnderstood(Meaning.NotUnderstood reason) {
                return () -> complain(draft, reason);
            }
        };
    }

    private boolean between(Draft draft, Decision.AskBetween between) {
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
            return true;
        }
        Message question = Message.of("confirm.between")
                .with("name", Fact.name(candidates.get(0).quantity()))
                .with("first", Fact.amount(candidates.get(0)))
                .with("second", Fact.amount(candidates.get(1)));
        List<Pending> questions = doubts.stillOpen(draft, candidates, 0);
        questions.add(0, Pending.Between.of(candidates, question));
        draft.become(draft.conversation().questioning(questions));
        return true;
    }

    private boolean again(Draft draft, Meaning.NotUnderstood reason) {
        complain(draft, reason);
        return true;
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
}
