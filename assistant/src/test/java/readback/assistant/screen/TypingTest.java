package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Command;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.prompts.text.Language;

class TypingTest {
    private final Typing typing = new Typing(new ScreenTexts(Language.english()));

    private Optional<Action> press(Stroke.Key key) {
        return typing.on(new Stroke.Pressed(key), Frame.EMPTY, false);
    }

    private void type(String text) {
        text.codePoints().forEach(letter -> typing.on(new Stroke.Typed(letter), Frame.EMPTY, false));
    }

    @Test
    void aTypedLineIsAnUtterance() {
        type("suction 118");

        assertThat(press(Stroke.Key.ENTER)).contains(new Action.Utter("suction 118"));
        assertThat(typing.text()).isEmpty();
    }

    @Test
    void backspaceTakesBackAndEscapeClears() {
        type("119");
        press(Stroke.Key.BACKSPACE);
        type("8");
        assertThat(typing.text()).isEqualTo("118");

        press(Stroke.Key.ESCAPE);
        assertThat(typing.text()).isEmpty();
        assertThat(press(Stroke.Key.ESCAPE)).contains(new Action.Quiet());
    }

    @Test
    void backspaceTakesBackAWholeCharacterAlsoWhereItTakesTwoUnitsOfText() {
        type("8\uD83D\uDE00");
        press(Stroke.Key.BACKSPACE);

        assertThat(typing.text()).isEqualTo("8");
    }

    @ParameterizedTest
    @CsvSource({
        "F1,HELP",
        "F2,YES",
        "F3,NO",
        "F4,SAY_AGAIN",
        "F5,WHY",
        "F6,HOLD_ON",
        "F7,WHERE_ARE_WE",
        "F8,SCRATCH_THAT",
        "F9,READ_READINGS",
        "F10,FINISH"
    })
    void aKeySaysWhatTheGrammarUnderstandsAsItsCommand(Stroke.Key key, Command command) {
        String words = ((Action.Utter) press(key).orElseThrow()).words();

        assertThat(Grammar.standard()
                        .understand(words, Expectation.open(UnitSetting.US))
                        .get(0)
                        .meaning())
                .isEqualTo(new Meaning.Ordered(command));
    }

    @Test
    void whileHeldTheHoldKeyCarriesOn() {
        assertThat(typing.on(new Stroke.Pressed(Stroke.Key.F6), Frame.EMPTY, true))
                .contains(new Action.Utter("carry on"));
    }

    @Test
    void theSpaceBarAndTheKeysOfClickersAreKeysToTalk() {
        assertThat(typing.on(new Stroke.Typed(' '), Frame.EMPTY, false)).contains(new Action.Talk());
        assertThat(press(Stroke.Key.PAGE_DOWN)).contains(new Action.Talk());
        assertThat(press(Stroke.Key.ENTER)).contains(new Action.Talk());
    }

    @Test
    void insideALineTheSpaceBarIsASpace() {
        type("wet bulb");

        assertThat(typing.text()).isEqualTo("wet bulb");
    }
}
