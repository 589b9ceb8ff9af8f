package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;

/** The formulas of 40 CFR 82.152 and the thresholds of 82.157 and 84.106, worked out by hand. */
class LeakRateTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 14);

    private static Refrigerant refrigerant(String designation) {
        return Catalogue.standard().find(designation).known().orElseThrow();
    }

    /** 5 lb of 50 lb are a tenth. */
    @Test
    void the_rolling_average_is_what_was_added_of_the_full_charge() {
        assertThat(LeakRate.rolling(Mass.pounds(5), Mass.pounds(50))).isCloseTo(10, within(1e-9));
    }

    @Test
    void there_is_no_rate_without_a_full_charge() {
        assertThatThrownBy(() -> LeakRate.rolling(Mass.pounds(1), Mass.NONE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_substance_that_depletes_ozone_has_its_rule_from_fifty_pounds() {
        LeakRule rule = LeakRule.of(refrigerant("R-22"), DAY).orElseThrow();

        assertThat(rule.name()).isEqualTo("40 CFR 82.157");
        assertThat(rule.percent()).isEqualTo(10);
        assertThat(rule.homesExempt()).isFalse();
        assertThat(rule.reaches(Mass.pounds(49.9))).isFalse();
        assertThat(rule.reaches(Mass.pounds(50))).isTrue();
    }

    @Test
    void one_that_warms_has_its_rule_from_fifteen_pounds_and_from_2026_and_homes_are_exempt() {
        LeakRule rule = LeakRule.of(refrigerant("R-410A"), DAY).orElseThrow();

        assertThat(rule.name()).isEqualTo("40 CFR 84.106");
        assertThat(rule.homesExempt()).isTrue();
        assertThat(rule.reaches(Mass.pounds(14.9))).isFalse();
        assertThat(rule.reaches(Mass.pounds(15))).isTrue();
        assertThat(LeakRule.of(refrigerant("R-410A"), LocalDate.of(2025, 12, 31)))
                .isEmpty();
    }

    @Test
    void one_that_does_neither_has_none() {
        assertThat(LeakRule.of(refrigerant("R-290"), DAY)).isEmpty();
    }
}
