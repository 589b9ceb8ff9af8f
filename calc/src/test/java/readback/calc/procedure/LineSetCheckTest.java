package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.measurement.Known;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

class LineSetCheckTest {

    /** Two equipment makers' guides: accessories beyond 80 ft of 3/8 in., one beyond 20 ft of rise as well. */
    @ParameterizedTest
    @CsvSource({"80, 0, false", "81, 0, true", "40, 20, false", "40, 21, true"})
    void beyond_eighty_feet_or_twenty_feet_up_the_makers_guide_is_asked(double feet, double lift, boolean asked) {
        assertThat(rules(check(feet, lift), 10).contains(CautionRule.LONG_LINE_SET))
                .isEqualTo(asked);
    }

    /** R-410A loses some 0.1 °F a foot: 0.43 psi a foot, and 4.5 psi a degree at 100 °F in a printed pressure table. */
    @Test
    void liquid_that_would_boil_on_the_way_is_told() {
        assertThat(rules(check(100, 80), 8)).doesNotContain(CautionRule.LIQUID_FLASHES_ON_THE_WAY);
        assertThat(rules(check(130, 100), 8))
                .containsExactly(CautionRule.LIQUID_FLASHES_ON_THE_WAY, CautionRule.LONG_LINE_SET);
    }

    @Test
    void a_lift_that_was_not_told_is_not_assumed() {
        LineSetCheck untold = new LineSetCheck(Unit.FOOT.toBase(60), Optional.empty());

        assertThat(untold.lift(Known.R410A)).isEmpty();
        assertThat(rules(untold, 0)).isEmpty();
    }

    /** The guide asks for an expansion valve from 50 ft. */
    @Test
    void the_lift_is_worth_asking_for_beyond_fifty_feet() {
        assertThat(check(50, 0).liftMatters()).isFalse();
        assertThat(check(51, 0).liftMatters()).isTrue();
    }

    private static LineSetCheck check(double feet, double lift) {
        return new LineSetCheck(Unit.FOOT.toBase(feet), Optional.of(Unit.FOOT.toBase(lift)));
    }

    private static List<CautionRule> rules(LineSetCheck check, double subcooling) {
        return check.cautions(Known.R410A, TemperatureDifference.fahrenheit(subcooling)).stream()
                .map(Caution::rule)
                .toList();
    }
}
