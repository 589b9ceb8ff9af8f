package readback.assistant.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.dialogue.Understood;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Interpretation;
import readback.grammar.Meaning;

/** What words mean, without sound and without a session. */
@Command(
        name = "understand",
        mixinStandardHelpOptions = true,
        description = "Prints what words mean, as one JSON line; without words, a line of standard input each.")
public final class UnderstandCommand implements Callable<Integer> {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Console console;

    @Parameters(arity = "0..*", paramLabel = "WORDS", description = "As spoken, for example: suction one one eight")
    private List<String> words = new ArrayList<>();

    @Option(
            names = "--step",
            paramLabel = "QUANTITY|CHOICE",
            description = "Understand as at the step that asks for this; then a bare number fills it.")
    private String step = "";

    @Option(names = "--units", paramLabel = "us|metric", description = "Units meant when none is said. Default: us.")
    private String units = "us";

    public UnderstandCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Grammar grammar = Grammar.standard();
        UnitSetting setting = SessionOptions.units(units);
        Expectation expectation = NamedStep.expectation(step, setting, grammar);
        if (!words.isEmpty()) {
            console.out().println(line(grammar, String.join(" ", words), expectation));
            return 0;
        }
        try {
            for (String text = console.in().readLine();
                    text != null;
                    text = console.in().readLine()) {
                console.out().println(line(grammar, text, expectation));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("standard input could not be read", e);
        }
        return 0;
    }

    private static String line(Grammar grammar, String text, Expectation expectation) {
        List<Interpretation> interpretations = grammar.understand(text, expectation);
        ObjectNode line = JSON.createObjectNode();
        line.put("words", CommandFailure.readable(text));
        line.put(
                "understood",
                interpretations.stream().anyMatch(each -> each.meaning().understood()));
        ArrayNode all = line.putArray("interpretations");
        for (Interpretation each : interpretations) {
            ObjectNode node = all.addObject();
            node.put("meaning", new Understood.Meant(each.meaning()).line());
            node.put("score", BigDecimal.valueOf(each.score()).setScale(3, RoundingMode.HALF_UP));
            each.meaning().fold(new Detail(node));
        }
        return line.toString();
    }

    /** Writes what belongs to each kind of meaning. */
    private record Detail(ObjectNode node) implements Meaning.Cases<ObjectNode> {

        @Override
        public ObjectNode values(Meaning.Values values) {
            node.put("kind", "values");
            return readings(values.readings());
        }

        @Override
        public ObjectNode correction(Meaning.Correction correction) {
            node.put("kind", "correction");
            return readings(correction.readings());
        }

        @Override
        public ObjectNode choice(Meaning.Choice choice) {
            return option("choice", choice);
        }

        @Override
        public ObjectNode choices(Meaning.Choices choices) {
            node.put("kind", "choices");
            choices.choices()
                    .forEach(each -> node.withArray("choices")
                            .addObject()
                            .put("choice", each.choice())
                            .put("option", each.option()));
            return node;
        }

        @Override
        public ObjectNode ordered(Meaning.Ordered ordered) {
            node.put("kind", "command").put("command", ConstantName.of(ordered.command()));
            ordered.about().ifPresent(about -> node.put("about", ConstantName.of(about)));
            return node;
        }

        @Override
        public ObjectNode note(Meaning.Note note) {
            return node.put("kind", "note").put("note", note.words());
        }

        @Override
        public ObjectNode saturationQuestion(Meaning.SaturationQuestion question) {
            node.put("kind", "saturation-question");
            return readings(List.of(question.pressure()));
        }

        @Override
        public ObjectNode probeNamed(Meaning.ProbeNamed named) {
            return node.put("kind", "probe-named")
                    .put("probe", named.number())
                    .put("quantity", ConstantName.of(named.quantity()));
        }

        @Override
        public ObjectNode mentioned(Meaning.Mentioned mentioned) {
            return option("mentioned", mentioned.of());
        }

        @Override
        public ObjectNode notUnderstood(Meaning.NotUnderstood not) {
            return node.put("kind", "not-understood")
                    .put("where", not.where())
                    .put("why", ConstantName.of(not.why().kind()));
        }

        private ObjectNode option(String kind, Meaning.Choice choice) {
            return node.put("kind", kind).put("choice", choice.choice()).put("option", choice.option());
        }

        private ObjectNode readings(List<Reading> readings) {
            ArrayNode array = node.putArray("readings");
            for (Reading stated : readings) {
                Reading reading = stated.inOneUnit();
                array.addObject()
                        .put("quantity", ConstantName.of(reading.quantity()))
                        .put("value", reading.value())
                        .put("unit", reading.unit().symbol());
            }
            return node;
        }
    }
}
