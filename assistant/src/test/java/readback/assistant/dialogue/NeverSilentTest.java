package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/** Whatever is typed, or said in words that are listened for, has an answer: in every state of a session. */
class NeverSilentTest {

    /** Of the phrases that are listened for, most of which are numbers. */
    private static final int EVERY = 11;

    private static final List<String> TYPED = List.of(
            "humpty dumpty sat on a wall",
            "?",
            "what do i do if my hose leaks",
            "what if the coil freezes up",
            "i smell gas",
            "winter set up please",
            "pressure test",
            "go to weigh in",
            "42",
            "one eighteen",
            "suction 118",
            "suction 7777",
            "four ten a",
            "it's a heat pump",
            "frozen coil",
            "thawed",
            "how long",
            "what's my superheat",
            "what is saturation at 120",
            "note dirty coil",
            "probe two is the suction line",
            "two more",
            "new filter",
            "stop talking",
            "carry on",
            "hold on",
            "finish",
            "yes",
            "no",
            "done",
            "skip",
            "don't know",
            "go back",
            "scratch that",
            "say again",
            "why",
            "how",
            "help",
            "take it",
            "measure now");

    private static final String TO_NUMBERS = "four ten a; piston; understood; yes; yes";
    private static final String TO_READINGS =
            TO_NUMBERS + "; outdoor 95; wet bulb 67; suction 118; suction line 62; liquid 340; liquid line 95";

    /** States of a session: the lines that lead there, the step that is asked there, whether it is on hold. */
    static Stream<Arguments> states() {
        return Stream.of(
                Arguments.of("at the beginning", "", "refrigerant", false),
                Arguments.of("before the cautions were heeded", "four ten a; piston", "hoses-on", false),
                Arguments.of("at a question", "four ten a; piston; understood", "air-path", false),
                Arguments.of("at a number", TO_NUMBERS, "outdoor-temperature", false),
                Arguments.of("at a value in doubt", TO_NUMBERS + "; outdoor forty", "confirm", false),
                Arguments.of("at a clue", TO_READINGS, "clue-discharge-line", false),
                Arguments.of("where a job was spoken of", TO_NUMBERS + "; pressure test please", "confirm", false),
                Arguments.of("asked whether to leave", TO_NUMBERS + "; finish", "confirm", false),
                Arguments.of("on hold", TO_NUMBERS + "; hold on", "outdoor-temperature", true),
                Arguments.of("on hold after a cry", TO_NUMBERS + "; i smell gas", "outdoor-temperature", true),
                Arguments.of("on hold in doubt", TO_NUMBERS + "; outdoor forty; hold on", "confirm", true),
                Arguments.of("with a frozen coil", TO_NUMBERS + "; frozen coil", "thaw-compressor-off", false),
                Arguments.of("while the coil thaws", TO_NUMBERS + "; frozen coil; done; done", "thaw-wait", false),
                Arguments.of(
                        "while pressure is held",
                        "go to pressure test; four ten a; understood; yes; understood; understood; plate pressure 450; 300; 70",
                        "pressure-hold",
                        false),
                Arguments.of(
                        "in the weigh-in",
                        "go to weigh in; four ten a; understood; piston",
                        "nameplate-charge",
                        false));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("states")
    void whatever_is_typed_or_listened_for_is_answered(String name, String before, String step, boolean held) {
        Rehearsal there = rehearsal(before);
        Expectation expected = Rehearsal.DIALOGUE.expectation(there.state());
        assertThat(expected.step()).as(name).isEqualTo(step);
        assertThat(there.state().held()).as(name).isEqualTo(held);

        for (String words : said(expected)) {
            for (Event.Source source : Event.Source.values()) {
                Hypothesis heard =
                        source == Event.Source.KEYS ? Hypothesis.typed(words) : new Hypothesis(words, 0.93, List.of());
                Turn turn = Rehearsal.DIALOGUE.on(
                        there.state(), new Event.Heard(there.now().plusSeconds(5), source, List.of(heard)));

                assertThat(turn.effects())
                        .as("\"%s\" by %s %s", words, source, name)
                        .hasAtLeastOneElementOfType(Effect.Say.class);
            }
        }
    }

    private static Rehearsal rehearsal(String lines) {
        Rehearsal rehearsal = new Rehearsal();
        Stream.of(lines.split(";", -1))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .forEach(rehearsal::says);
        return rehearsal;
    }

    private static Set<String> said(Expectation expected) {
        List<String> listened = Rehearsal.GRAMMAR.vocabulary(expected).phrases().stream()
                .distinct()
                .filter(phrase -> !phrase.contains(Vocabulary.UNKNOWN))
                .toList();
        Set<String> said = new LinkedHashSet<>(TYPED);
        for (int i = 0; i < listened.size(); i += EVERY) {
            said.add(listened.get(i));
        }
        return said;
    }
}
