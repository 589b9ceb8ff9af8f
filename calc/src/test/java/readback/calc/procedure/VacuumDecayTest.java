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
        assertThat(judge(criterion(300, 60, 500), at(0, 300), at(60, 480))).isEqualTo(Outcome.TIGHT);
        assertThat(judge(criterion(300, 60, 500), at(0, 300), at(60, 500))).isEqualTo(Outcome.TIGHT);
        assertThat(judge(criterion(300, 60, 500), at(0, 300), at(60, 650))).isEqualTo(Outcome.FAILED);
    }

    /** Common practice: 500 microns, 10 minutes, not above 500. */
    @Test
    void the_field_criterion_waits_ten_minutes() {
        assertThat(judge(VacuumCriterion.FIELD, at(0, 450), at(9, 490))).isEqualTo(Outcome.WAIT);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 450), at(10, 500))).isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 480), at(2, 501))).isEqualTo(Outcome.FAILED);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 480))).isEqualTo(Outcome.WAIT);
    }

    /** Two makers' installation instructions. */
    @Test
    void makers_set_their_own_criteria() {
        assertThat(judge(criterion(500, 20, 500), at(0, 400), at(20, 500))).isEqualTo(Outcome.TIGHT);
        assertThat(judge(criterion(250, 15, 700), at(0, 250), at(15, 690))).isEqualTo(Outcome.TIGHT);
        assertThat(judge(criterion(250, 15, 700), at(0, 300), at(15, 400))).isEqualTo(Outcome.NOT_DEEP_ENOUGH);
    }

    /**
     * An even climb is a leak, however low it stands yet (UFGS 15182, 3.3.3, allows 500 at the end, not a thousand).
     */
    @Test
    void an_even_climb_to_990_is_no_tight_circuit() {
        assertThat(judge(VacuumCriterion.FIELD, at(0, 450), at(5, 720), at(10, 990)))
                .isEqualTo(Outcome.LEAK);
    }

    @Test
    void below_the_limit_the_rise_must_level_off_or_stand_still() {
        assertThat(judge(VacuumCriterion.FIELD, at(0, 300), at(5, 400), at(10, 440)))
                .isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 450), at(5, 465), at(10, 484)))
                .isEqualTo(Outcome.TIGHT);
        assertThat(judge(VacuumCriterion.FIELD, at(0, 300), at(5, 390), at(10, 480)))
                .isEqualTo(Outcome.CLIMBING);
    }

    @Test
    void the_makers_figure_is_the_limit_and_the_pump_is_not_isolated_above_it() {
        VacuumCriterion lower = VacuumCriterion.FIELD.stayingBelow(at(0, 350).pressure());
        VacuumCriterion higher = VacuumCriterion.FIELD.stayingBelow(at(0, 1000).pressure());

        assertThat(judge(lower, at(0, 400))).isEqualTo(Outcome.NOT_DEEP_ENOUGH);
        assertThat(judge(lower, at(0, 300), at(10, 360))).isEqualTo(Outcome.FAILED);
        assertThat(judge(higher, at(0, 510))).isEqualTo(Outcome.NOT_DEEP_ENOUGH);
        assertThat(judge(higher, at(0, 450), at(5, 700), at(10, 750))).isEqualTo(Outcome.TIGHT);
    }

    @Test
    void the_rise_a_minute_goes_from_the_first_sample_to_the_last() {
        assertThat(VacuumDecay.pascalsPerMinute(List.of(at(10, 990), at(0, 450), at(5, 800)))
                        .orElseThrow())
                .isCloseTo(Unit.MICRON.toBase(54), org.assertj.core.api.Assertions.within(1e-9));
        assertThat(VacuumDecay.pascalsPerMinute(List.of(at(0, 450)))).isEmpty();
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

    private static VacuumCriterion criterion(double from, long minutes, double below) {
        return new VacuumCriterion(
                AbsolutePressure.microns(from), Duration.ofMinutes(minutes), AbsolutePressure.microns(below));
    }

    private static Outcome judge(VacuumCriterion criterion, Sample... samples) {
        return VacuumDecay.judge(List.of(samples), criterion);
    }

    private static Sample at(double minutes, double microns) {
        return new Sample(
                Duration.ofMillis(Math.round(minutes * 60_000)), AbsolutePressure.pascals(Unit.MICRON.toBase(microns)));
    }
}
