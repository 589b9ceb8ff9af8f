package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a mistake on the command line is answered with: in the units that were given, short, with what to do. */
class EdgesTest {

    private static String refused(String... arguments) {
        Ran ran = Ran.of("", arguments);
        assertThat(ran.code()).as(ran.out()).isNotZero();
        assertThat(ran.err())
                .startsWith("readback: ")
                .doesNotContain("Exception")
                .hasSizeLessThan(1_000);
        return ran.err();
    }

    @Test
    void airThatCannotBeIsToldInTheDegreesThatWereGiven() {
        assertThat(refused("air", "--dry", "80", "--wet", "90"))
                .contains("dry bulb 80 °F and wet bulb 90 °F")
                .doesNotContain(" K");
        assertThat(refused("air", "--dry", "25", "--dew", "30", "--celsius")).contains("dew point 30 °C");
        assertThat(refused("air", "--dry", "80", "--humidity", "120")).contains("humidity 120 percent");
    }

    /**
     * 635 psig: the dew pressure of R-410A at 0.985 of its critical temperature, Lemmon 2003, less the air's 14.7 psi.
     */
    @Test
    void aPressureWithoutSaturationIsToldInItsOwnUnit() {
        assertThat(refused("saturation", "--refrigerant", "R-410A", "--gauge", "1000"))
                .contains("at 1000 psig")
                .containsPattern("to 6[0-9][0-9](\\.\\d)? psig")
                .doesNotContain(" Pa")
                .doesNotContain(" K");
        assertThat(refused("saturation", "--refrigerant", "R-410A", "--gauge", "90", "--unit", "bar"))
                .contains("at 90 bar(g)")
                .doesNotContain("psig");
        assertThat(refused("saturation", "--refrigerant", "R-410A", "--gauge", "1e999999999"))
                .contains("--gauge");
    }

    @Test
    void eachLineOfABatchHasItsAnswer() {
        List<String> lines = Ran.of("R-410A,118\n\nR-22,70\n", "saturation", "--batch")
                .out()
                .lines()
                .toList();

        assertThat(lines).hasSize(3);
        assertThat(lines.get(1)).contains("error");
        assertThat(lines.get(2)).contains("R-22");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--speed=9", "--volume=3", "--gate=5", "--theme=pink", "--listen=never", "--voice=parrot"})
    void anOptionOutOfRangeIsRefusedThoughNothingUsesIt(String option) {
        assertThat(refused("check", "--typed", option)).contains(option.substring(0, option.indexOf('=')));
    }

    @Test
    void unitsThatThereAreNotAreRefused() {
        assertThat(refused("understand", "--units", "furlongs", "suction fifty"))
                .contains("us or metric");
    }

    @Test
    void anEndlessWordIsNotEchoedWhole() {
        String endless = "x".repeat(3_000);

        refused("saturation", "--refrigerant", endless, "--gauge", "1");
        refused("saturation", "--refrigerant", "R-22", "--gauge", endless);
        refused("hear", "--step", endless, "none.wav");
        refused("check", "--" + endless);
        assertThat(Ran.of("", "understand", endless).out()).hasSizeLessThan(600);
        assertThat(Ran.of(endless + ",1\n", "saturation", "--batch").out()).hasSizeLessThan(400);
    }
}
