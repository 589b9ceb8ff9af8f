package readback.assistant.command;

import java.nio.file.Path;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.ModelFolder;
import readback.assistant.ear.ModelTrial;
import readback.assistant.ear.SecondOpinion;
import readback.assistant.ear.UnpackedModel;
import readback.assistant.ear.VoskEar;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.AcousticModel;
import readback.grammar.Expectation;
import readback.grammar.Grammar;

/** Which acoustic model listens. */
final class EarOptions {

    @Option(
            names = "--model",
            paramLabel = "DIR",
            description = "Folder of another acoustic model for English, in place of the two that come with Readback.")
    private @Nullable Path model;

    /** An ear that is ready; a foreign model that lacks words of ours is used, after a warning that lists them. */
    Ear open(Grammar grammar, Console console) {
        Ear ear = open();
        warn(ear, grammar, console);
        return ear;
    }

    /** An ear that is ready, nothing told of its words. */
    Ear open() {
        try {
            return tryOpen();
        } catch (EarUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** Lists the words that it cannot hear, if its model is a foreign one that lacks words of ours. */
    void warn(Ear ear, Grammar grammar, Console console) {
        if (model == null) {
            return;
        }
        SortedSet<String> missing = ear.missing(words(grammar));
        if (!missing.isEmpty()) {
            console.complain("the model in '" + model + "' cannot hear these words, so they must be typed or said"
                    + " otherwise: " + String.join(", ", missing) + ".");
        }
    }

    /** Every word that any step listens for. */
    private static SortedSet<String> words(Grammar grammar) {
        SortedSet<String> words = new TreeSet<>();
        for (Quantity quantity : Quantity.values()) {
            words.addAll(
                    grammar.vocabulary(Expectation.of(quantity, UnitSetting.US)).words());
        }
        for (String choice : grammar.choices().sets()) {
            words.addAll(grammar.vocabulary(NamedStep.expectation(choice, UnitSetting.US, grammar))
                    .words());
        }
        words.remove(Ear.UNKNOWN);
        return words;
    }

    /** The ear, without a look at its words. */
    Ear tryOpen() throws EarUnavailableException {
        return model == null ? bundled() : VoskEar.open(ModelTrial.passed(ModelFolder.at(model)));
    }

    /** The second model is loaded while the first one listens already: it is asked only where doubt is left. */
    private static Ear bundled() throws EarUnavailableException {
        VoskEar first = VoskEar.open(UnpackedModel.ofUser(AcousticModel.bundled()));
        try {
            return new SecondOpinion(first, VoskEar.openLater(UnpackedModel.ofUser(AcousticModel.second())));
        } catch (EarUnavailableException unfit) {
            first.close();
            throw unfit;
        }
    }
}
