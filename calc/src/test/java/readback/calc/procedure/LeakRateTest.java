package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.procedure.LeakRate.Addition;
import readback.calc.procedure.LeakRate.Scope;
import readback.calc.procedure.LeakRate.Use;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

/** 40 CFR 82.152, 82.157, 84.102 and 84.106 (from memory but for 82.157(a) and (c)). */
class LeakRateTest {

    private static final Mass SIXTY = Mass.pounds(60);
    private static final Mass TEN = Mass.pounds(10);

    /** 100 × (10/60) × 365/120, and the days capped at 365. */
    @ParameterizedTest
    @CsvSource({"120, 0.507", "365, 0.167", "700, 0.167", "1, 60.8"})
    void annualising_stretches_the_loss_to_a_year(int days, double rate) {
        assertThat(LeakRate.annualised(TEN, SIXTY, days)).isCloseTo(rate, within(0.05 * rate / 10));
    }

    @Test
    void a_rate_of_half_a_charge_a_year_is_over_the_comfort_cooling_trigger() {
        assertThat(LeakRate.annualised(TEN, SIXTY, 120)).isGreaterThan(Use.COMFORT_COOLING.trigger());
    }

    /** 40 CFR 82.157(c)(2). */
    @Test
    void triggers_are_ten_twenty_and_thirty_percent() {
        assertThat(Use.COMFORT_COOLING.trigger()).isEqualTo(0.10);
        assertThat(Use.COMMERCIAL_REFRIGERATION.trigger()).isEqualTo(0.20);
        assertThat(Use.INDUSTRIAL_PROCESS.trigger()).isEqualTo(0.30);
    }

    @Test
    void the_rolling_average_counts_a_year_or_since_the_last_verification() {
        List<Addition> additions = List.of(
                new Addition(Mass.pounds(3), 400), new Addition(Mass.pounds(6), 365), new Addition(Mass.pounds(3), 20));

        assertThat(LeakRate.rolling(additions, SIXTY, OptionalInt.empty())).isCloseTo(9.0 / 60, within(1e-12));
        assertThat(LeakRate.rolling(additions, SIXTY, OptionalInt.of(100))).isCloseTo(3.0 / 60, within(1e-12));
        assertThat(LeakRate.rolling(additions, SIXTY, OptionalInt.of(20))).isCloseTo(3.0 / 60, within(1e-12));
        assertThat(LeakRate.rolling(additions, SIXTY, OptionalInt.of(1000))).isCloseTo(9.0 / 60, within(1e-12));
        assertThat(LeakRate.rolling(List.of(), SIXTY, OptionalInt.empty())).isZero();
    }

    /** 84.106(a)(3)(ii): telling a house owner that the federal leak clock runs would be wrong. */
    @ParameterizedTest
    @CsvSource({
        "RESIDENTIAL_AND_LIGHT_COMMERCIAL_COOLING, 8,  false, 2088, EXEMPT_RESIDENTIAL",
        "RESIDENTIAL_AND_LIGHT_COMMERCIAL_COOLING, 40, false, 2088, EXEMPT_RESIDENTIAL",
        "RESIDENTIAL_AND_LIGHT_COMMERCIAL_COOLING, 8,  true,  1810, BELOW_THRESHOLD",
        "COMFORT_COOLING,          50,   true,  1810, OZONE_DEPLETING_RULE",
        "COMFORT_COOLING,          49.9, true,  1810, BELOW_THRESHOLD",
        "COMFORT_COOLING,          15,   false, 2088, HYDROFLUOROCARBON_RULE",
        "COMFORT_COOLING,          14.9, false, 2088, BELOW_THRESHOLD",
        "COMMERCIAL_REFRIGERATION, 60,   false, 53,   BELOW_THRESHOLD",
        "COMMERCIAL_REFRIGERATION, 60,   false, 54,   HYDROFLUOROCARBON_RULE"
    })
    void the_rule_that_applies_depends_on_use_charge_and_refrigerant(
            Use use, double pounds, boolean ozoneDepleting, double gwp, Scope scope) {
        assertThat(LeakRate.scope(use, Mass.pounds(pounds), ozoneDepleting, gwp))
                .isEqualTo(scope);
    }

    @Test
    void what_makes_no_sense_is_refused() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LeakRate.annualised(TEN, Mass.NONE, 10))
                .withMessageContaining("full charge");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LeakRate.annualised(TEN, SIXTY, 0))
                .withMessageContaining("days");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LeakRate.annualised(Mass.pounds(-1), SIXTY, 10))
                .withMessageContaining("amount added");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LeakRate.rolling(List.of(), Mass.NONE, OptionalInt.empty()));
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(
                        () -> LeakRate.rolling(List.of(new Addition(Mass.pounds(-1), 1)), SIXTY, OptionalInt.empty()));
        assertThat(LeakRate.annualised(Mass.NONE, SIXTY, 10)).isZero();
    }
}
