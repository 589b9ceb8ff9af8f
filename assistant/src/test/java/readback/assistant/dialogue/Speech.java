package readback.assistant.dialogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.session.Line;
import readback.calc.quantity.Unit;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * What was said in one turn of a reviewed conversation to one end.
 *
 * @param messages what was spoken of them, in order
 * @param texts the words, one for each
 * @param where the conversation and the event, counted from the start
 */
record Speech(Kind kind, boolean brief, String where, List<Message> messages, List<String> texts) {

    /** To what end something is said. */
    enum Kind {
        GREETING("greeting and first question", 6, 4),
        READ_BACK("read-back and next question", 4, 4),
        OTHER("other answers and doubts, and the question again", 7, 7),
        ADVICE("what to do about an answer", 8, 8),
        VERDICT("verdict with its first step", 8, 4),
        SAFETY("cautions, to be understood", 12, 12),
        HELP("help", 8, 8),
        ASKED("why, how, numbers, readings, where we are", Double.NaN, Double.NaN);

        private final String title;
        private final double guide;
        private final double brief;

        Kind(String title, double guide, double brief) {
            this.title = title;
            this.guide = guide;
            this.brief = brief;
        }

        String title() {
            return title;
        }

        /** Seconds that it may take; empty where the technician asked for it. */
        OptionalDouble goal(boolean briefly) {
            double goal = briefly ? brief : guide;
            return Double.isNaN(goal) ? OptionalDouble.empty() : OptionalDouble.of(goal);
        }
    }

    /** Two values are a breath; each further one may take this long, since each is read back. */
    private static final double SECONDS_A_FURTHER_VALUE = 2.2;

    /** Two cautions are usual; each further one may take this long, since none is left out. */
    private static final double SECONDS_A_CAUTION = 5;

    /** The same for one that a charge check of what does not burn never gives. */
    private static final double SECONDS_A_RARE_CAUTION = 11;

    private static final Set<String> USUAL_CAUTIONS =
            Set.of("caution.high-pressure", "caution.frostbite", "caution.asphyxiation", "caution.cylinder-overfill");

    /** Orders whose answer was wanted, however long. */
    private static final Set<Command> ASKING = Set.of(
            Command.WHY,
            Command.HOW,
            Command.READ_READINGS,
            Command.READ_NUMBERS,
            Command.WHERE_ARE_WE,
            Command.SAY_AGAIN);

    /** Orders that answer what was asked. */
    private static final Set<Command> ANSWERING =
            Set.of(Command.YES, Command.NO, Command.DONE, Command.FINISH, Command.SKIP, Command.UNKNOWN);

    /** Sets of choices that answer nothing that was asked. */
    private static final Set<String> CHANGING = Set.of("checklist", "units");

    private static final Set<String> ADVISING =
            Set.of("cylinder.room", "scale.not-fallen", "confirm.lapsed", "job.back");

    /** Messages that say which check fits instead, and what to do with a restrictor. */
    private static final Set<String> ADVISING_ALL = Set.of("situation", "winter");

    private static final Set<String> PREPARING = Checklists.standard().all().stream()
            .flatMap(list -> list.steps().stream())
            .filter(step -> step.task().prepared().isPresent())
            .map(Step::id)
            .collect(Collectors.toSet());

    double seconds() {
        return SpeechTempo.seconds(texts);
    }

    /** Seconds that it may take; empty where the technician asked for it. */
    OptionalDouble goal() {
        OptionalDouble goal = kind.goal(brief);
        return switch (kind) {
            case READ_BACK, OTHER ->
                OptionalDouble.of(
                        goal.getAsDouble() + Math.max(0, count(Speech::values) - 1) * SECONDS_A_FURTHER_VALUE);
            case SAFETY ->
                OptionalDouble.of(goal.getAsDouble()
                        + Math.max(0, count(message -> caution(message, true)) - 2) * SECONDS_A_CAUTION
                        + count(message -> caution(message, false)) * SECONDS_A_RARE_CAUTION);
            default -> goal;
        };
    }

    private int count(ToIntFunction<Message> of) {
        return messages.stream().mapToInt(of).sum();
    }

    /** Whether it takes longer than it may, by more than the tempo is known. */
    boolean over() {
        return seconds() > goal().orElse(Double.MAX_VALUE) + SpeechTempo.TYPICAL_ERROR_SECONDS;
    }

    /** For a reader: how long, of what kind, where, and the words. */
    String line() {
        return String.format(
                Locale.ROOT,
                "%.1f s, %s%s, %s: %s",
                seconds(),
                kind.title(),
                brief ? " (brief)" : "",
                where,
                String.join(" ", texts));
    }

    /** Everything said in a reviewed conversation, in order. */
    static List<Speech> of(Path conversation) throws IOException {
        List<String> lines = Files.readAllLines(conversation);
        List<Event> events = GoldenConversationTest.rehearse(lines).events();
        List<Speech> all = new ArrayList<>();
        Turn turn = Rehearsal.DIALOGUE.begin((Event.Started) events.get(0));
        String name = conversation.getFileName().toString();
        all.addAll(of(turn, events.get(0), name + " 0"));
        for (int i = 1; i < events.size(); i++) {
            turn = Rehearsal.DIALOGUE.on(turn.state(), events.get(i));
            all.addAll(of(turn, events.get(i), name + " " + i));
        }
        return all;
    }

    private static List<Speech> of(Turn turn, Event event, String where) {
        List<Message> outcomes = outcomes(turn.state());
        Kind usual = usual(turn, event);
        List<Speech> speeches = new ArrayList<>();
        for (Line line : Line.of(turn, Rehearsal.WORDING)) {
            if (line.spoken().isBlank()) {
                continue;
            }
            Kind kind = kind(line.message(), usual, outcomes);
            List<Message> messages = new ArrayList<>();
            List<String> texts = new ArrayList<>();
            // what goes on to the same end is one speech; a verdict in between ends it
            if (!speeches.isEmpty() && speeches.get(speeches.size() - 1).kind() == kind) {
                Speech before = speeches.remove(speeches.size() - 1);
                messages.addAll(before.messages());
                texts.addAll(before.texts());
            }
            messages.add(line.message());
            texts.add(line.spoken());
            speeches.add(new Speech(kind, turn.state().brief(), where, messages, texts));
        }
        return speeches;
    }

    private static int caution(Message message, boolean usual) {
        return message.facts().get("text") instanceof Fact.Text text
                        && message.key().equals("caution.say")
                        && USUAL_CAUTIONS.contains(text.message().key()) == usual
                ? 1
                : 0;
    }

    private static int values(Message message) {
        return message.facts().values().stream()
                .flatMap(fact -> fact instanceof Fact.Listing listing ? listing.facts().stream() : Stream.of(fact))
                .mapToInt(Speech::values)
                .sum();
    }

    /** A value that takes the place of another is read back with it; pounds and ounces are two numbers. */
    private static int values(Fact fact) {
        if (fact instanceof Fact.Stated stated) {
            return stated.reading().unit() == Unit.POUND_AND_OUNCES ? 2 : 1;
        }
        return fact instanceof Fact.Text text && text.message().key().equals("readback.instead") ? 2 : 0;
    }

    private static Kind usual(Turn turn, Event event) {
        Understood understood = turn.outcome().understood();
        if (event instanceof Event.Started) {
            return Kind.GREETING;
        }
        if (understood.orders(Command.HELP)) {
            return Kind.HELP;
        }
        boolean asked = understood
                .meaning()
                .filter(meaning -> meaning instanceof Meaning.SaturationQuestion
                        || meaning.order().filter(ASKING::contains).isPresent())
                .isPresent();
        // a choice that fills nothing is a question or a cry, which is answered as long as it needs
        boolean answered = understood
                .meaning()
                .filter(meaning -> meaning instanceof Meaning.Choice || asksWhatIf(meaning))
                .filter(meaning -> turn.outcome().changes().isEmpty())
                .isPresent();
        if (asked || answered || event instanceof Event.Resumed) {
            return Kind.ASKED;
        }
        boolean answer = understood
                .meaning()
                .filter(meaning -> meaning.order().map(ANSWERING::contains).orElse(answers(meaning)))
                .isPresent();
        boolean doubted =
                turn.state().conversation().pending().flatMap(Pending::inDoubt).isPresent();
        return answer && !doubted ? Kind.READ_BACK : Kind.OTHER;
    }

    /** "What do I do if my hose leaks"; a job that is spoken of is a question back. */
    private static boolean asksWhatIf(Meaning meaning) {
        return meaning instanceof Meaning.Mentioned mentioned
                && !CHANGING.contains(mentioned.of().choice());
    }

    private static boolean answers(Meaning meaning) {
        boolean chosen = meaning instanceof Meaning.Choice choice && !CHANGING.contains(choice.choice());
        return chosen || !meaning.readings().isEmpty();
    }

    private static Kind kind(Message message, Kind usual, List<Message> outcomes) {
        String key = message.key();
        if (usual == Kind.ASKED || usual == Kind.HELP) {
            return usual;
        }
        if (key.startsWith("where")) {
            return Kind.ASKED;
        }
        if (outcomes.contains(message) || key.equals("verdict.same") || key.equals("verdict.changed")) {
            return Kind.VERDICT;
        }
        if (key.equals("caution.say")
                || key.equals("caution.same")
                || key.equals("caution.heed")
                || asksToBeUnderstood(key)) {
            return Kind.SAFETY;
        }
        boolean advice = ADVISING.contains(key)
                || ADVISING_ALL.contains(key.split("\\.", -1)[0])
                || (key.startsWith("step.")
                        && (key.endsWith(".yes") || key.endsWith(".no") || key.endsWith(".repeat")));
        return advice ? Kind.ADVICE : usual;
    }

    private static boolean asksToBeUnderstood(String key) {
        return key.startsWith("step.") && PREPARING.contains(key.split("\\.", -1)[1]);
    }

    private static List<Message> outcomes(State state) {
        return Stream.of(Judged.values())
                .flatMap(what -> state.assessment().announcement(what).stream())
                .map(Announcement::messages)
                .flatMap(List::stream)
                .toList();
    }
}
