package readback.assistant.drill;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Meaning;
import readback.grammar.Prior;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * One drill, from the greeting to the sum: asks, understands, grades what was known and never what was heard. Knows no
 * clock. Owned by one thread.
 */
public final class Drill {

    /** An answer within so many seconds is known at once, one within the others without trouble. Decision 0021. */
    private static final double AT_ONCE = 6;

    private static final double WITHOUT_TROUBLE = 20;

    /** So many tolerances off is nearly right. Decision 0021. */
    private static final double NEAR = 2;

    private final Grammar grammar;
    private final UnitSetting units;
    private final Deque<Asked> open = new ArrayDeque<>();
    private final Set<String> repeated = new TreeSet<>();
    private final List<Graded> graded = new ArrayList<>();
    private final int planned;

    private @Nullable Question question;
    private @Nullable Meaning doubted;
    private boolean helped;
    private boolean closed;

    /** A skill that is still to be asked for. */
    private record Asked(Skill skill, int review) {}

    /**
     * An answer with its grade.
     *
     * @param review how often the skill was asked for before
     * @param answer as it was understood; empty where none was given
     */
    public record Graded(Skill skill, int review, Grade grade, String answer) {}

    /**
     * What an utterance led to.
     *
     * @param says what is said now
     * @param graded empty where the question is still open
     */
    public record Reply(List<Message> says, Optional<Graded> graded) {
        public Reply {
            says = List.copyOf(says);
        }
    }

    private Drill(Grammar grammar, UnitSetting units, List<Asked> plan) {
        this.grammar = grammar;
        this.units = units;
        this.open.addAll(plan);
        this.planned = plan.size();
    }

    /** A drill of what is due now and of a few new skills. */
    public static Drill due(Grammar grammar, UnitSetting units, Progress progress, Instant now) {
        return of(grammar, units, Plan.of(Skill.all(), progress, now), progress);
    }

    /** A drill of these skills. */
    public static Drill of(Grammar grammar, UnitSetting units, List<Skill> skills, Progress progress) {
        return new Drill(
                grammar,
                units,
                skills.stream()
                        .map(skill -> new Asked(skill, progress.asked(skill)))
                        .toList());
    }

    /** The greeting and the first question; nothing where there is nothing to ask. */
    public List<Message> begin() {
        if (open.isEmpty()) {
            closed = true;
            return List.of();
        }
        List<Message> says = new ArrayList<>();
        says.add(
                planned == 1
                        ? Message.of("drill.greeting.one")
                        : Message.of("drill.greeting").with("count", new Fact.Count(planned)));
        says.add(next());
        return says;
    }

    /** Whether it is over. */
    public boolean closed() {
        return closed;
    }

    /** What is being listened for. */
    public Expectation expectation() {
        Expectation anything = Expectation.open(units);
        if (question == null) {
            return anything;
        }
        if (doubted != null) {
            return anything.answeredBy(Command.YES, Command.NO);
        }
        return question.wanted().fold(new Wanted.Cases<>() {
            @Override
            public Expectation number(Wanted.Amount number) {
                return Expectation.of(number.value().quantity(), units);
            }

            @Override
            public Expectation option(Wanted.Option option) {
                return new Expectation(
                        option.set(), Optional.empty(), Optional.of(option.set()), Optional.empty(), units);
            }

            @Override
            public Expectation agreement(Wanted.Agreement agreement) {
                return anything.answeredBy(Command.YES, Command.NO);
            }
        });
    }

    /**
     * Takes what was heard or typed.
     *
     * @param seconds from the end of the question to the beginning of the answer
     */
    public Reply hears(List<Hypothesis> heard, double seconds) {
        if (closed || question == null) {
            return new Reply(List.of(), Optional.empty());
        }
        return grammar.decide(heard, expectation(), Prior.indifferent()).fold(new Decision.Cases<>() {
            @Override
            public Reply accept(Decision.Accept accept) {
                return taken(accept, seconds);
            }

            @Override
            public Reply askBetween(Decision.AskBetween between) {
                List<Reading> values = between.candidates().stream()
                        .flatMap(each -> each.readings().stream())
                        .toList();
                return only(Message.of("drill.between")
                        .with("first", Fact.amount(values.get(0)))
                        .with("second", Fact.amount(values.get(1))));
            }

            @Override
            public Reply askAgain(Decision.AskAgain again) {
                return unclear();
            }

            @Override
            public Reply ignore(Decision.Ignore ignore) {
                return new Reply(List.of(), Optional.empty());
            }
        });
    }

    private Reply taken(Decision.Accept accept, double seconds) {
        Meaning meaning = accept.meaning();
        Optional<Command> order = meaning.order();
        if (doubted != null && order.isPresent()) {
            Meaning before = doubted;
            if (order.get() == Command.YES) {
                doubted = null;
                return answered(before, seconds);
            }
            if (order.get() == Command.NO) {
                doubted = null;
                return only(asked().asked());
            }
        }
        if (order.isPresent() && !answersYesOrNo(order.get())) {
            return ordered(order.get());
        }
        if (accept.doubtful() && !meaning.readings().isEmpty()) {
            doubted = meaning;
            return only(Message.of("drill.doubtful")
                    .with("value", Fact.amount(meaning.readings().get(0))));
        }
        doubted = null;
        return answered(meaning, seconds);
    }

    private boolean answersYesOrNo(Command order) {
        return (order == Command.YES || order == Command.NO) && asked().wanted() instanceof Wanted.Agreement;
    }

    private Reply ordered(Command order) {
        return switch (order) {
            case FINISH -> {
                closed = true;
                yield only(sum());
            }
            case SKIP, UNKNOWN -> graded(Grade.AGAIN, "", List.of(solution("drill.unknown"), asked().because()));
            case WHY, HOW, HELP, GUIDE -> {
                helped = true;
                yield only(hint());
            }
            case SAY_AGAIN, WHERE_ARE_WE -> {
                helped = true;
                yield only(asked().asked());
            }
            default -> unclear();
        };
    }

    private Reply answered(Meaning meaning, double seconds) {
        return asked().wanted().fold(new Wanted.Cases<>() {
            @Override
            public Reply number(Wanted.Amount number) {
                Optional<Reading> said = meaning.readings().stream()
                        .filter(reading -> reading.quantity() == number.value().quantity())
                        .findFirst();
                return said.map(reading -> judged(number, reading, seconds)).orElseGet(Drill.this::unclear);
            }

            @Override
            public Reply option(Wanted.Option option) {
                return meaning instanceof Meaning.Choice choice
                                && choice.choice().equals(option.set())
                        ? judged(choice.option().equals(option.right()), choice.option(), seconds)
                        : unclear();
            }

            @Override
            public Reply agreement(Wanted.Agreement agreement) {
                return meaning.order()
                        .filter(Drill.this::answersYesOrNo)
                        .map(order ->
                                judged((order == Command.YES) == agreement.yes(), ConstantName.of(order), seconds))
                        .orElseGet(Drill.this::unclear);
            }
        });
    }

    private Reply judged(Wanted.Amount number, Reading said, double seconds) {
        double off =
                Math.abs(said.in(number.value().unit()) - number.value().value().doubleValue()) / number.tolerance();
        String answer = Fact.amount(said).shown();
        if (off > NEAR) {
            return graded(Grade.AGAIN, answer, List.of(solution("drill.wrong"), asked().because()));
        }
        if (off > 1) {
            return graded(Grade.HARD, answer, List.of(solution("drill.near"), asked().because()));
        }
        return graded(known(seconds), answer, List.of(solution("drill.right.about")));
    }

    private Reply judged(boolean right, String answer, double seconds) {
        return right
                ? graded(known(seconds), answer, List.of(Message.of("drill.right"), asked().because()))
                : graded(Grade.AGAIN, answer, List.of(solution("drill.wrong"), asked().because()));
    }

    private Grade known(double seconds) {
        if (helped || seconds > WITHOUT_TROUBLE) {
            return Grade.HARD;
        }
        return seconds < AT_ONCE ? Grade.EASY : Grade.GOOD;
    }

    /** The right answer, as the text of this key tells it. */
    private Message solution(String key) {
        return asked().wanted().fold(new Wanted.Cases<>() {
            @Override
            public Message number(Wanted.Amount number) {
                return Message.of(key).with("value", Fact.amount(number.value()));
            }

            @Override
            public Message option(Wanted.Option option) {
                return Message.of(key).with("value", VerdictSkills.term(option.set(), option.right()));
            }

            @Override
            public Message agreement(Wanted.Agreement agreement) {
                return Message.of("drill.wrong." + (agreement.yes() ? "yes" : "no"));
            }
        });
    }

    private Message hint() {
        return asked().wanted().fold(new Wanted.Cases<>() {
            @Override
            public Message number(Wanted.Amount number) {
                return Message.of("drill.hint.number");
            }

            @Override
            public Message option(Wanted.Option option) {
                return Message.of("drill.hint.option")
                        .with(
                                "options",
                                new Fact.Listing(option.offered().stream()
                                        .map(each -> VerdictSkills.term(option.set(), each))
                                        .toList()));
            }

            @Override
            public Message agreement(Wanted.Agreement agreement) {
                return Message.of("drill.hint.agreement");
            }
        });
    }

    private Reply graded(Grade grade, String answer, List<Message> told) {
        Asked now = open.remove();
        Graded answered = new Graded(now.skill(), now.review(), grade, answer);
        graded.add(answered);
        // once more, with other numbers, before the day is over
        if (!grade.recalled() && repeated.add(now.skill().id())) {
            open.add(new Asked(now.skill(), now.review() + 1));
        }
        List<Message> says = new ArrayList<>(told);
        says.add(open.isEmpty() ? sum() : next());
        closed = open.isEmpty();
        return new Reply(says, Optional.of(answered));
    }

    private Message next() {
        Asked now = open.element();
        question = now.skill().question(now.review(), units);
        helped = false;
        doubted = null;
        return question.asked();
    }

    private Message sum() {
        if (graded.isEmpty()) {
            return Message.of("drill.end.none");
        }
        int known =
                (int) graded.stream().filter(each -> each.grade().recalled()).count();
        return Message.of("drill.end")
                .with("right", new Fact.Count(known))
                .with("count", new Fact.Count(graded.size()));
    }

    private Reply unclear() {
        return new Reply(List.of(Message.of("drill.unclear"), hint()), Optional.empty());
    }

    private static Reply only(Message message) {
        return new Reply(List.of(message), Optional.empty());
    }

    private Question asked() {
        if (question == null) {
            throw new IllegalStateException("nothing was asked");
        }
        return question;
    }
}
