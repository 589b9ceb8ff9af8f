package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Temperature;

/**
 * The air temperature rise is that of one maker's table of a three-ton heat pump (-10, 17, 47 and 65 °F). The other
 * limits are common practice, no source.
 */
class HeatingCheckTest {

    private static HeatingCheck.Result judged(
            double outdoor,
            double indoor,
            @Nullable Double supply,
            @Nullable Double discharge,
            @Nullable Double boiling,
            @Nullable Double suction) {
        return HeatingCheck.judge(new HeatingCheck.Readings(
                Temperature.fahrenheit(outdoor),
                Temperature.fahrenheit(indoor),
                Optional.ofNullable(supply).map(Temperature::fahrenheit),
                Optional.ofNullable(discharge).map(Temperature::fahrenheit),
                Optional.ofNullable(boiling).map(Temperature::fahrenheit),
                Optional.ofNullable(suction).map(Temperature::fahrenheit)));
    }

    @ParameterizedTest(name = "outdoors {0} °F: {1} °F")
    @CsvSource({"-10, 7.5", "17, 16", "47, 25.6", "65, 32", "32, 20.8"})
    void the_usual_rise_is_that_of_the_table(double outdoor, double rise) {
        assertThat(judged(outdoor, 70, null, null, null, null).usualRise().fahrenheit())
                .isCloseTo(rise, within(0.05));
    }

    @ParameterizedTest(name = "outdoors {0}, supply {1}, discharge {2}, boiling {3}, suction {4}: {5} {6}")
    @CsvSource({
        // a sound unit at the rating point of 47 °F
        "47, 96, 150, 32, 42, PLAUSIBLE, ''",
        // the same at 20 °F, the edge of what is judged
        "20, 87, 125, 5, 15, PLAUSIBLE, ''",
        "47, 80, 150, 32, 42, SUSPICIOUS, RISE_SMALL",
        "47, 107, 150, 32, 42, SUSPICIOUS, RISE_LARGE",
        "47, 96, 126, 32, 42, SUSPICIOUS, DISCHARGE_COOL",
        "47, 96, 127, 32, 42, PLAUSIBLE, ''",
        "47, 96, 177, 32, 42, PLAUSIBLE, ''",
        "47, 96, 178, 32, 42, SUSPICIOUS, DISCHARGE_HOT",
        "47, 96, 150, 32, 36.9, SUSPICIOUS, SUPERHEAT_LOW",
        "47, 96, 150, 32, 37, PLAUSIBLE, ''",
        "47, 96, 150, 32, 53, SUSPICIOUS, SUPERHEAT_HIGH",
        "47, 96, 150, 16, 30, SUSPICIOUS, BOILING_COLD",
        "47, 96, 150, 43, 50, SUSPICIOUS, BOILING_WARM",
        // short of refrigerant: starved outdoor coil, hot discharge, little heat
        "47, 82, 185, 12, 40, SUSPICIOUS, SUPERHEAT_HIGH DISCHARGE_HOT BOILING_COLD RISE_SMALL"
    })
    void what_stands_out(
            double outdoor,
            double supply,
            double discharge,
            double boiling,
            double suction,
            HeatingCheck.Outcome outcome,
            String signs) {
        HeatingCheck.Result result = judged(outdoor, 70, supply, discharge, boiling, suction);

        assertThat(result.outcome()).isEqualTo(outcome);
        assertThat(result.signs())
                .map(Enum::name)
                .isEqualTo(signs.isEmpty() ? List.of() : List.of(signs.split(" ", -1)));
    }

    @ParameterizedTest(name = "outdoors {0}, indoors {1}: {2}")
    @CsvSource({
        "19.9, 70, OUTDOOR_TOO_COLD",
        "60.1, 70, OUTDOOR_TOO_WARM",
        "47, 64.9, INDOOR_UNUSUAL",
        "47, 75.1, INDOOR_UNUSUAL"
    })
    void on_such_a_day_nothing_is_told(double outdoor, double indoor, HeatingCheck.Obstacle obstacle) {
        HeatingCheck.Result result = judged(outdoor, indoor, 96.0, 150.0, 32.0, 42.0);

        assertThat(result.outcome()).isEqualTo(HeatingCheck.Outcome.CANNOT_TELL);
        assertThat(result.obstacle()).contains(obstacle);
    }

    @Test
    void one_look_alone_tells_nothing() {
        assertThat(judged(47, 70, 96.0, null, null, null).obstacle()).contains(HeatingCheck.Obstacle.TOO_LITTLE_READ);
        assertThat(judged(47, 70, 96.0, 150.0, null, null).outcome()).isEqualTo(HeatingCheck.Outcome.PLAUSIBLE);
    }
}
