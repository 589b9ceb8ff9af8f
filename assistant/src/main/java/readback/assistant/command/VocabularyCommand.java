package readback.assistant.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Grammar;
import readback.grammar.Vocabulary;

/** What the ear listens for at a step. */
@Command(
        name = "vocabulary",
        mixinStandardHelpOptions = true,
        description = "Prints the phrases that are listened for at a step, one a line; their repetition counts.")
public final class VocabularyCommand implements Callable<Integer> {

    private final Console console;

    @Option(
            names = "--step",
            paramLabel = "QUANTITY|CHOICE",
            description =
                    "The step that asks for this, as in suction-pressure or refrigerant. Default: any named value.")
    private String step = "";

    @Option(names = "--words", description = "The words instead of the phrases, in alphabetical order.")
    private boolean words;

    public VocabularyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Grammar grammar = Grammar.standard();
        Vocabulary vocabulary = grammar.vocabulary(NamedStep.expectation(step, UnitSetting.US, grammar));
        if (words) {
            vocabulary.words().forEach(console.out()::println);
        } else {
            vocabulary.phrases().forEach(console.out()::println);
        }
        return 0;
    }
}
