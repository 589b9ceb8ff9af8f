package readback.assistant.dialogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.session.Line;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Step;
import readback.prompts.text.Message;

/**
 * What was said in one turn of a reviewed conversation to one end.
 *
 * @param values how many values were read back in it
 * @param where the conversation and the event, counted from the start
 */
record Speech(Kind kind, boolean brief, int values, String where, List<String> texts) {

    /** To what end something is said. */
    enum Kind {
        GREETING("greeting and first question", 6, 4),
        READ_BACK("read-back and next question", 4, 4),
        NOT_TAKEN("words not taken, and the question again", 6, 6),
        ADVICE("what to do about an answer, and next question", 8, 8),
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
    private static final double SECONDS_A_FURTHER_VALUE = 2;

    /** Orders whose answer was wanted, however long. */
    private static final Set<Command> ASKING =
            Set.of(Command.WHY, Command.HOW, Command.READ_READINGS, Command.WHERE_ARE_WE, Command.SAY_AGAIN);

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
        return kind == Kind.READ_BACK && values > 1
                ? OptionalDouble.of(goal.getAsDouble() + (values - 1) * SECONDS_A_FURTHER_VALUE)
                : goal;
    }

    String said() {
        return String.join(" ", texts);
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
        Map<Kind, List<String>> texts = new EnumMap<>(Kind.class);
        List<Message> outcomes = outcomes(turn.state());
        Kind usual = usual(turn, event);
        int values = 0;
        for (Line line : Line.of(turn, Rehearsal.WORDING)) {
            if (!line.spoken().isBlank()) {
                texts.computeIfAbsent(kind(line.message(), usual, outcomes), any -> new ArrayList<>())
                        .add(line.spoken());
                values += valuesIn(line.message());
            }
        }
        int readBack = values;
        List<Speech> speeches = new ArrayList<>();
        texts.forEach((kind, said) -> speeches.add(new Speech(kind, turn.state().brief(), readBack, where, said)));
        return speeches;
    }

    private static int valuesIn(Message message) {
        return message.key().startsWith("readback")
                        && message.facts().get("values") instanceof readback.prompts.text.Fact.Listing values
                ? values.facts().size()
                : 0;
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
        if (asked || event instanceof Event.Resumed) {
            return Kind.ASKED;
        }
        boolean taken = understood.meaning().filter(Meaning::understood).isPresent()
                && !turn.state().inDoubt();
        return taken || !(event instanceof Event.Heard) ? Kind.READ_BACK : Kind.NOT_TAKEN;
    }

    private static Kind kind(Message message, Kind usual, List<Message> outcomes) {
        String key = message.key();
        if (usual == Kind.ASKED || usual == Kind.HELP) {
            return usual;
        }
        if (outcomes.contains(message) || key.equals("verdict.same") || key.equals("verdict.changed")) {
            return Kind.VERDICT;
        }
        if (key.equals("caution.say") || key.equals("caution.heed") || asksToBeUnderstood(key)) {
            return Kind.SAFETY;
        }
        boolean answer = key.startsWith("step.") && (key.endsWith(".yes") || key.endsWith(".no"));
        return answer ? Kind.ADVICE : usual;
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
