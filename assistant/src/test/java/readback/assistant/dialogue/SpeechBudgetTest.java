package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Nobody is heard while the program speaks: no text of a reviewed conversation takes longer than it may. Worked out
 * from the text, so that no clock and no voice is needed; {@link SpeechTimes} prints the figures.
 */
class SpeechBudgetTest {

    private static final Path GOLDEN = Path.of("src/test/resources/readback/assistant/golden");

    static Stream<Path> conversations() throws IOException {
        return SpeechTimes.conversations().stream();
    }

    @ParameterizedTest
    @MethodSource("conversations")
    void nothing_takes_longer_than_it_may(Path conversation) throws IOException {
        assertThat(Speech.of(conversation).stream().filter(Speech::over).map(Speech::line))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"four-readings.txt, 60", "four-readings-brief.txt, 30", "four-readings-brief-again.txt, 26"})
    void a_whole_call_is_held_to_its_time(String call, double most) throws IOException {
        List<Speech> all = Speech.of(GOLDEN.resolve(call));
        assertThat(all.stream().mapToDouble(Speech::seconds).sum())
                .as(() -> String.join("\n", all.stream().map(Speech::line).toList()))
                .isLessThanOrEqualTo(most);
    }

    /** Measured with flite, voice rms, trimmed, 2026-11-28, on texts that came after the fit. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Superheat one zero point two above target: charge low. Look for the leak. | 5.30
            Warning: high pressure: goggles, gloves and rated hoses; open slowly.     | 5.15
            Filter, coils, panels, registers and blower okay?                         | 4.13
            suction, one one eight p s i.                                             | 2.25
            """)
    void the_tempo_is_that_of_the_voice(String text, double measured) {
        assertThat(SpeechTempo.seconds(text)).isCloseTo(measured, within(2 * SpeechTempo.TYPICAL_ERROR_SECONDS));
    }

    @Test
    void silence_takes_no_time() {
        assertThat(SpeechTempo.seconds("")).isZero();
        assertThat(SpeechTempo.seconds(List.of("", " "))).isZero();
    }
}
