package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.procedure.VacuumDecay.Outcome;
import readback.calc.procedure.VacuumDecay.Sample;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Unit;

class VacuumDecayTest {

    /** UFGS 15182, 3.3.3: 300 microns, isolated one hour, not above 500. */
    @Test
    void from_300_microns_an_hour_to_480_passes_and_to_650_fails() {
        assertThat(judge(VacuumCriterion.GUIDE_SPECIFICATION, at(0, 300), at(60, 480)))
                .isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.GUIDE_SPECIFICATION, at(0, 300), at(60, 500)))
                .isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.GUIDE_SPECIFICATION, at(0, 300), at(60, 650)))
                .isEqualTo(Outcome.FAILED);
    }

    /** Common practice: 500 microns, 10 minutes, not above 1,000. */
    @Test
    void the_field_criterion_waits_ten_minutes() {
        assertThat(judge(VacuumCriterion.FIELD, at(0, 480), at(9, 700))).isEqualTo(Outcome.WAIT);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 480), at(10, 700))).isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 480), at(2, 1001))).isEqualTo(Outcome.FAILED);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 480))).isEqualTo(Outcome.WAIT);
    }

    /** Two makers' installation instructions. */
    @Test
    void makers_set_their_own_criteria() {
        assertThat(judge(VacuumCriterion.MAKER_HOLDING_500, at(0, 400), at(20, 500)))
                .isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.MAKER_FROM_250, at(0, 250), at(15, 690)))
                .isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.MAKER_FROM_250, at(0, 300), at(15, 400)))
                .isEqualTo(Outcome.NOT_DEEP_ENOUGH);
    }

    /** Trade practice: a plateau is moisture. */
    @Test
    void a_rise_that_levels_off_is_moisture() {
        assertThat(judge(
                        VacuumCriterion.FIELD,
                        at(0, 400),
                        at(2, 1000),
                        at(4, 1300),
                        at(6, 1450),
                        at(8, 1500),
                        at(10, 1520)))
                .isEqualTo(Outcome.MOISTURE);
    }

    /** Trade practice: a straight climb is a leak. */
    @Test
    void a_straight_climb_is_a_leak() {
        assertThat(judge(
                        VacuumCriterion.FIELD,
                        at(0, 400),
                        at(2, 700),
                        at(4, 1000),
                        at(6, 1300),
                        at(8, 1600),
                        at(10, 1900)))
                .isEqualTo(Outcome.LEAK);
    }

    @Test
    void half_the_early_rise_is_where_levelling_begins() {
        assertThat(judge(VacuumCriterion.FIELD, at(0, 400), at(5, 1000), at(10, 1290)))
                .isEqualTo(Outcome.MOISTURE);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 400), at(5, 1000), at(10, 1310)))
                .isEqualTo(Outcome.LEAK);
    }

    @Test
    void the_sample_nearest_to_half_time_divides_the_rise() {
        assertThat(judge(VacuumCriterion.FIELD, at(0, 400), at(1, 900), at(4.8, 1000), at(9.8, 1090), at(10, 1100)))
                .isEqualTo(Outcome.MOISTURE);
    }

    @Test
    void samples_may_come_in_any_order() {
        List<Sample> samples = new ArrayList<>(List.of(at(0, 400), at(5, 1000), at(10, 1290)));
        Collections.reverse(samples);

        assertThat(VacuumDecay.judge(samples, VacuumCriterion.FIELD)).isEqualTo(Outcome.MOISTURE);
    }

    @Test
    void no_sample_at_all_is_refused() {
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> VacuumDecay.judge(List.of(), VacuumCriterion.FIELD));
    }

    private static Outcome judge(VacuumCriterion criterion, Sample... samples) {
        return VacuumDecay.judge(List.of(samples), criterion);
    }

    private static Sample at(double minutes, double microns) {
        return new Sample(
                Duration.ofMillis(Math.round(minutes * 60_000)), AbsolutePressure.pascals(Unit.MICRON.toBase(microns)));
    }
}
