package readback.calc.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EfficiencyTest {

    @ParameterizedTest(name = "{0} SEER: {1} to {2} °F")
    @CsvSource({
        "0, 25, 35",
        "8, 25, 35",
        "9, 25, 35",
        "10, 20, 30",
        "12, 20, 30",
        "13, 15, 25",
        "15, 15, 25",
        "16, 10, 20",
        "26, 10, 20",
        "40, 10, 20"
    })
    void the_more_efficient_the_less_above_the_outdoor_air(int seer, double low, double high) {
        assertThat(Efficiency.rated(seer).condensingOverOutdoor()).isEqualTo(Band.fahrenheit(low, high));
    }

    @ParameterizedTest(name = "built {0}: {1} to {2} °F")
    @CsvSource({"1900, 10, 35", "1991, 10, 35", "1992, 10, 30", "2005, 10, 30", "2006, 10, 25", "2026, 10, 25"})
    void a_year_tells_only_the_least_that_was_allowed(int year, double low, double high) {
        assertThat(Efficiency.builtIn(year).condensingOverOutdoor()).isEqualTo(Band.fahrenheit(low, high));
    }

    @Test
    void what_no_equipment_has_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Efficiency.rated(41));
        assertThatIllegalArgumentException().isThrownBy(() -> Efficiency.rated(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Efficiency(14, 13));
        assertThatIllegalArgumentException().isThrownBy(() -> Efficiency.builtIn(-1));
    }
}
