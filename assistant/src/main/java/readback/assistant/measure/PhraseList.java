package readback.assistant.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.IntStream;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Vocabulary;
import readback.grammar.number.NumberStyle;

/** What is listened for while a clip is heard: the phrases of a dialogue step, or a short list of words. */
public enum PhraseList {
    /** What the dialogue listens for where a value is asked for; a command only where it is one of these phrases. */
    STEP,
    /** Zero to nine. */
    DIGITS,
    /** Twenty-six words of command, and whatever else the clips say that is neither value nor unrelated. */
    COMMANDS,
    /** Every word that numbers are made of, in any order. */
    NUMBERS;

    /** Zero to nine, in words. */
    static final List<String> TEN_DIGITS = IntStream.rangeClosed(0, 9)
            .mapToObj(
                    digit -> NumberStyle.CARDINAL.say(BigDecimal.valueOf(digit)).orElseThrow())
            .toList();

    private static final List<String> TWENTY_SIX_COMMANDS = List.of(
            "yes",
            "no",
            "next",
            "back",
            "repeat",
            "confirm",
            "correction",
            "scratch that",
            "pause",
            "resume",
            "stop",
            "help",
            "up",
            "down",
            "left",
            "right",
            "on",
            "off",
            "go",
            "cancel",
            "start",
            "continue",
            "skip",
            "undo",
            "done",
            "finish");

    private static final List<String> OTHER_NUMBER_WORDS = Arrays.asList(
            ("oh ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty"
                            + " sixty seventy eighty ninety hundred thousand point half quarter minus and")
                    .split(" "));

    /** The phrases for the recogniser, unknown speech among them. */
    Vocabulary vocabulary(Grammar grammar, Expectation expectation, Collection<String> commands) {
        return switch (this) {
            case STEP -> grammar.vocabulary(expectation);
            case DIGITS -> Vocabulary.ofPhrases(Vocabulary.withUnknown(TEN_DIGITS));
            case COMMANDS -> {
                TreeSet<String> all = new TreeSet<>(TWENTY_SIX_COMMANDS);
                all.addAll(commands);
                yield Vocabulary.ofPhrases(Vocabulary.withUnknown(List.copyOf(all)));
            }
            case NUMBERS -> {
                List<String> all = new ArrayList<>(TEN_DIGITS);
                all.addAll(OTHER_NUMBER_WORDS);
                yield Vocabulary.ofPhrases(Vocabulary.withUnknown(all));
            }
        };
    }

    /** The lists that a clip is heard with: those whose words it may say, and all of them for unrelated speech. */
    static List<PhraseList> of(Clip clip) {
        if (clip.unrelated()) {
            return List.of(values());
        }
        if (!clip.value()) {
            return List.of(COMMANDS, STEP);
        }
        return switch (clip.kind()) {
            case "digit" -> List.of(DIGITS);
            case "number" -> List.of(NUMBERS, STEP);
            default -> List.of(STEP);
        };
    }

    /** The name in a table. */
    String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
