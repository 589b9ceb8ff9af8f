package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.pistonWithLineAt;

import org.junit.jupiter.api.Test;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;

/** By the standard atmosphere 118 psig of R-410A boils 1.1 °F colder at 5,000 ft, and 2.1 °F colder at 10,000 ft. */
class UnknownAltitudeTest {

    private final ChargeJudge judge = new ChargeJudge();

    private boolean matters(double line) {
        Readings readings = pistonWithLineAt(line);
        return UnknownAltitude.matters(
                PISTON, readings, judge.judge(PISTON, readings).verdict());
    }

    @Test
    void it_matters_where_a_degree_or_two_cross_a_limit() {
        // 17 °F is the upper limit for a target of 12 °F: 57 °F of line is 0.2 °F beyond it, 56 within a degree
        assertThat(matters(56)).isTrue();
        // at sea level too low by 0.8 °F, inside higher up
        assertThat(matters(46)).isTrue();
    }

    @Test
    void it_does_not_matter_on_target_or_far_beyond() {
        assertThat(matters(52)).isFalse();
        assertThat(matters(62)).isFalse();
    }

    @Test
    void it_never_matters_without_a_comparison() {
        Readings readings = pistonWithLineAt(52).without(Quantity.SUCTION_PRESSURE);

        assertThat(UnknownAltitude.matters(
                        PISTON, readings, judge.judge(PISTON, readings).verdict()))
                .isFalse();
    }
}
