package readback.assistant.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/** What the ear makes of recordings, before any meaning. */
@Command(
        name = "hear",
        mixinStandardHelpOptions = true,
        description = "Prints what the ear hears in recordings: one JSON line an utterance.")
public final class HearCommand implements Callable<Integer> {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "FILE|FOLDER", description = "WAV recordings.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--step",
            paramLabel = "QUANTITY|CHOICE",
            description = "Listen as at the step that asks for this, as in suction-pressure or refrigerant."
                    + " Default: any named value.")
    private String step = "";

    @Mixin
    private EarOptions ear = new EarOptions();

    public HearCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Grammar grammar = Grammar.standard();
        Expectation expectation = NamedStep.expectation(step, UnitSetting.US, grammar);
        List<AudioFiles.Playable> recordings = AudioFiles.read(files, console);
        try (Ear listening = ear.open(grammar, console)) {
            Vocabulary vocabulary = grammar.vocabulary(expectation);
            for (AudioFiles.Playable recording : recordings) {
                AudioFileFeed feed = new AudioFileFeed(listening, recording.sound());
                while (!feed.ended()) {
                    Optional<Utterance> heard = feed.next(vocabulary);
                    heard.ifPresent(utterance -> console.out().println(line(recording.file(), utterance)));
                }
            }
        }
        return 0;
    }

    private static String line(Path file, Utterance utterance) {
        ObjectNode line = JSON.createObjectNode();
        line.put("file", file.toString());
        line.put("words", utterance.words());
        line.put("confidence", rounded(utterance.confidence()));
        line.put("start", rounded(utterance.startSeconds()));
        line.put("end", rounded(utterance.endSeconds()));
        ArrayNode alternatives = line.putArray("alternatives");
        for (Hypothesis each : utterance.alternatives()) {
            alternatives.addObject().put("words", each.words()).put("confidence", rounded(each.confidence()));
        }
        return line.toString();
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    }
}
