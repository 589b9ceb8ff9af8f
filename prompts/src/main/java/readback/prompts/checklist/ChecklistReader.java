package readback.prompts.checklist;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import readback.calc.caution.Activity;
import readback.calc.charge.Verdict;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;

/** Reads one checklist file, keeping for every value the line it stands on so that faults can be pointed at. */
final class ChecklistReader {

    /** A job as the index lists it. */
    record JobEntry(String id, List<PartEntry> parts) {}

    /** A checklist named by a job. */
    record PartEntry(String checklist, StepCondition when, long line) {}

    /** A JSON value with its line. */
    private record Node(long line, Object value) {}

    private final String file;
    private final Node root;

    private ChecklistReader(String file, Node root) {
        this.file = file;
        this.root = root;
    }

    static ChecklistReader open(String file, Checklists.Source source) {
        String text = source.text(file);
        if (text == null) {
            throw new ChecklistFault(file, 1, "the file is missing");
        }
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.enable(com.fasterxml.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION.mappedFeature());
            parser.nextToken();
            return new ChecklistReader(file, node(parser));
        } catch (com.fasterxml.jackson.core.JacksonException e) {
            long line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            throw new ChecklistFault(file, line, "not valid JSON: " + e.getOriginalMessage());
        } catch (IOException e) {
            throw new ChecklistFault(file, 1, "could not be read: " + e.getMessage());
        }
    }

    private static Node node(JsonParser parser) throws IOException {
        long line = parser.currentTokenLocation().getLineNr();
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Node> fields = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                parser.nextToken();
                fields.put(name, node(parser));
            }
            return new Node(line, fields);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Node> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(node(parser));
            }
            return new Node(line, items);
        }
        if (token == JsonToken.VALUE_TRUE || token == JsonToken.VALUE_FALSE) {
            return new Node(line, parser.getBooleanValue());
        }
        return new Node(line, String.valueOf(parser.getText()));
    }

    ChecklistFault fault(long line, String fault) {
        return new ChecklistFault(file, line, fault);
    }

    List<JobEntry> jobs() {
        List<JobEntry> jobs = new ArrayList<>();
        for (Node job : list(field(root, "jobs"))) {
            allowOnly(job, Set.of("id", "parts"));
            List<PartEntry> parts = new ArrayList<>();
            for (Node part : list(field(job, "parts"))) {
                allowOnly(part, Set.of("checklist", "when"));
                parts.add(new PartEntry(
                        string(field(part, "checklist")),
                        condition(part, "when", new StepCondition.Always()),
                        part.line()));
            }
            jobs.add(new JobEntry(string(field(job, "id")), List.copyOf(parts)));
        }
        return jobs;
    }

    Checklist checklist(String id, Set<String> stepIds) {
        allowOnly(root, Set.of("repeats", "steps"));
        List<Step> steps = new ArrayList<>();
        for (Node node : list(field(root, "steps"))) {
            Step step = step(node);
            if (!stepIds.add(step.id())) {
                throw fault(node.line(), "step \"" + step.id() + "\" exists already");
            }
            steps.add(step);
        }
        if (steps.isEmpty()) {
            throw fault(root.line(), "a checklist needs at least one step");
        }
        return new Checklist(id, flag(root, "repeats"), steps);
    }

    private Step step(Node node) {
        Map<String, Node> fields = object(node);
        Set<String> tasks = Set.of(
                "measure", "choose", "question", "acknowledge", "prepare", "judge", "await", "measureAgain", "signOff");
        List<String> given = fields.keySet().stream().filter(tasks::contains).toList();
        if (given.size() != 1) {
            throw fault(
                    node.line(),
                    "a step has exactly one of " + tasks.stream().sorted().toList() + ", not " + given);
        }
        String kind = given.get(0);
        Set<String> known =
                new HashSet<>(Set.of("id", "texts", "when", "again", "optional", "slot", "concludes", kind));
        if (kind.equals("await")) {
            known.add("watched");
        }
        if (kind.equals("question") || kind.equals("acknowledge")) {
            known.add("readingsAnew");
        }
        if (kind.equals("question")) {
            known.addAll(Set.of("inWords", "toldBy"));
        }
        allowOnly(node, known);
        Task task = task(kind, node);
        String id = string(field(node, "id"));
        Node slot = fields.get("slot");
        Node texts = fields.get("texts");
        return new Step(
                id,
                texts == null ? id : string(texts),
                task,
                condition(node, "when", new StepCondition.Always()),
                condition(node, "again", new StepCondition.Not(new StepCondition.Always())),
                flag(node, "optional"),
                slot == null ? task.slot(id) : slot(slot),
                conclusion(fields.get("concludes")),
                flag(node, "readingsAnew"));
    }

    private Slot slot(Node node) {
        return new Slot(string(node));
    }

    private Optional<Step.Conclusion> conclusion(@Nullable Node node) {
        if (node == null) {
            return Optional.empty();
        }
        allowOnly(node, Set.of("slot", "yes", "no"));
        Node yes = object(node).get("yes");
        Node no = object(node).get("no");
        return Optional.of(new Step.Conclusion(
                slot(field(node, "slot")),
                yes == null ? Optional.empty() : Optional.of(string(yes)),
                no == null ? Optional.empty() : Optional.of(string(no))));
    }

    private Optional<Task.Told> told(@Nullable Node node) {
        if (node == null) {
            return Optional.empty();
        }
        allowOnly(node, Set.of("quantity", "no"));
        return Optional.of(new Task.Told(quantity(field(node, "quantity")), condition(field(node, "no"))));
    }

    private Task task(String kind, Node step) {
        Node value = field(step, kind);
        return switch (kind) {
            case "await" -> new Task.Await(duration(value), flag(step, "watched"));
            case "measure" -> new Task.Measure(quantity(value));
            case "choose" -> new Task.Choose(string(value));
            case "question" ->
                new Task.Question(
                        answers(value),
                        Optional.ofNullable(object(step).get("inWords")).map(this::string),
                        told(object(step).get("toldBy")));
            case "measureAgain" -> new Task.MeasureAgain();
            case "acknowledge" -> new Task.Acknowledge();
            case "signOff" -> new Task.SignOff();
            case "prepare" -> new Task.Prepare(activity(value));
            default -> new Task.Judge(judged(value));
        };
    }

    private Task.Question.Answers answers(Node value) {
        return switch (string(value)) {
            case "must-be-yes" -> Task.Question.Answers.MUST_BE_YES;
            case "yes-or-no" -> Task.Question.Answers.ALIKE;
            case "advised" -> Task.Question.Answers.ADVISED;
            default ->
                throw fault(
                        value.line(),
                        "a question is \"yes-or-no\", \"must-be-yes\" or \"advised\", not \"" + value.value() + "\"");
        };
    }

    private Quantity quantity(Node value) {
        return spelled(value, Quantity.class, "is not a quantity; the quantities are ");
    }

    /** A constant as the code spells it. */
    private <E extends Enum<E>> E spelled(Node value, Class<E> type, String fault) {
        try {
            return Enum.valueOf(type, string(value));
        } catch (IllegalArgumentException e) {
            throw fault(value.line(), "\"" + value.value() + "\" " + fault + List.of(type.getEnumConstants()));
        }
    }

    private Set<Verdict.Kind> verdicts(Node value) {
        return list(value).stream()
                .map(each -> constant(each, Verdict.Kind.class, "is no verdict; the verdicts are "))
                .collect(Collectors.toSet());
    }

    private Judged judged(Node value) {
        return constant(value, Judged.class, "cannot be judged; what can is ");
    }

    private <E extends Enum<E>> E constant(Node value, Class<E> type, String fault) {
        return ConstantName.find(type, string(value))
                .orElseThrow(() -> fault(
                        value.line(),
                        "\"" + value.value() + "\" " + fault
                                + Stream.of(type.getEnumConstants())
                                        .map(ConstantName::of)
                                        .toList()));
    }

    private Activity activity(Node value) {
        return spelled(value, Activity.class, "is not an activity; the activities are ");
    }

    private Duration duration(Node value) {
        try {
            return Duration.parse(string(value));
        } catch (DateTimeException e) {
            throw fault(value.line(), "\"" + value.value() + "\" is not a duration like PT15M");
        }
    }

    private StepCondition condition(Node node, String name, StepCondition unsaid) {
        Node value = object(node).get(name);
        return value == null ? unsaid : condition(value);
    }

    private StepCondition condition(Node node) {
        Map<String, Node> fields = object(node);
        if (fields.containsKey("slot")) {
            allowOnly(node, Set.of("slot", "is"));
            return new StepCondition.OptionIs(slot(field(node, "slot")), strings(field(node, "is")));
        }
        if (fields.size() != 1) {
            throw fault(node.line(), "a condition has exactly one kind, not " + fields.keySet());
        }
        String kind = fields.keySet().iterator().next();
        Node value = field(node, kind);
        return switch (kind) {
            case "answered" -> new StepCondition.Answered(slot(value));
            case "measured" -> new StepCondition.Measured(slot(value));
            case "verdict" -> new StepCondition.VerdictIs(verdicts(value));
            case "found" -> new StepCondition.Found(string(value));
            case "not" -> new StepCondition.Not(condition(value));
            case "all" ->
                new StepCondition.AllOf(
                        list(value).stream().map(this::condition).toList());
            case "any" ->
                new StepCondition.AnyOf(
                        list(value).stream().map(this::condition).toList());
            default ->
                throw fault(
                        node.line(),
                        "\"" + kind
                                + "\" is not a condition; use slot/is, answered, measured, verdict, found, not, all or any");
        };
    }

    private void allowOnly(Node node, Set<String> names) {
        for (Map.Entry<String, Node> entry : object(node).entrySet()) {
            if (!names.contains(entry.getKey())) {
                throw fault(
                        entry.getValue().line(),
                        "\"" + entry.getKey() + "\" is not known here; use "
                                + names.stream().sorted().toList());
            }
        }
    }

    private Node field(Node node, String name) {
        Node value = object(node).get(name);
        if (value == null) {
            throw fault(node.line(), "\"" + name + "\" is missing");
        }
        return value;
    }

    @SuppressWarnings("unchecked") // node() builds objects only as maps of nodes
    private Map<String, Node> object(Node node) {
        if (node.value() instanceof Map<?, ?> map) {
            return (Map<String, Node>) map;
        }
        throw fault(node.line(), "expected an object, found " + node.value());
    }

    @SuppressWarnings("unchecked") // node() builds arrays only as lists of nodes
    private List<Node> list(Node node) {
        if (node.value() instanceof List<?> list) {
            return (List<Node>) list;
        }
        throw fault(node.line(), "expected a list, found " + node.value());
    }

    private String string(Node node) {
        if (node.value() instanceof String text && !text.isBlank()) {
            return text;
        }
        throw fault(node.line(), "expected a text, found " + node.value());
    }

    private Set<String> strings(Node node) {
        return Set.copyOf(list(node).stream().map(this::string).toList());
    }

    private boolean flag(Node node, String name) {
        Node value = object(node).get(name);
        if (value == null) {
            return false;
        }
        if (value.value() instanceof Boolean flag) {
            return flag;
        }
        throw fault(value.line(), "\"" + name + "\" is true or false, not " + value.value());
    }
}
