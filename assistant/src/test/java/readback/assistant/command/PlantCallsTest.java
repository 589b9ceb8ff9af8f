package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantCallsTest {

    @Test
    void calls_at_simulated_units_are_counted_and_one_can_be_shown() {
        Ran counted = Ran.of("", "measure", "--plant", "3", "--seed", "5", "--level", "full");
        Ran shown = Ran.of("", "measure", "--plant", "3", "--seed", "5", "--call", "2");

        assertThat(counted.code()).isZero();
        assertThat(counted.out())
                .contains("3 calls at simulated units, start number 5, level full")
                .contains("refrigerant moved for a fault that is not the charge");
        assertThat(shown.code()).isZero();
        assertThat(shown.out()).startsWith("call 2: ").contains("> understood").contains("first verdict");
    }

    @ParameterizedTest
    @CsvSource({
        "--plant 0, 1 to 100000",
        "--plant 100001, 1 to 100000",
        "--plant -3, 1 to 100000",
        "--plant many, not an int",
        "--plant 3 --level most, checklist or full",
        "--plant 3 --call 4, 1 to 3",
        "--plant 3 --call 0, 1 to 3",
        "--seed 5, belong to --plant",
        "--level full, belong to --plant",
        "--plant 3 recordings, needs no recordings",
        "--plant 3 --idle 2, needs no recordings",
        "--plant 3 --calls 2, leave out the folder and --calls",
        "--calls 2 --joined 3, needs no recordings",
        "--calls 2 --level full, needs no recordings",
        "'--calls 2 --noise 10,5', one level of --noise"
    })
    void wrong_options_are_refused_with_the_reason(String options, String reason) {
        Ran ran = Ran.of("", ("measure " + options).split(" ", -1));

        assertThat(ran.code()).isNotZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(reason).hasLineCount(ran.err().contains("Try:") ? 2 : 1);
    }
}
