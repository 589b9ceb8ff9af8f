package readback.calc.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.Known;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Signal words by ANSI Z535 (from memory); sources of the rules beside {@link CautionRule}. */
class CautionFinderTest {

    private static final Refrigerant R32 = Known.refrigerant("R-32");
    private static final Refrigerant R290 = Known.refrigerant("R-290");

    @Test
    void graver_signal_words_come_first_and_every_rule_has_a_rank_of_its_own() {
        List<Caution> all = new ArrayList<>();
        for (CautionRule rule : CautionRule.values()) {
            all.add(rule.caution());
        }

        assertThat(all).extracting(Caution::signal).isSorted();
        assertThat(all)
                .extracting(Caution::priority)
                .doesNotHaveDuplicates()
                .isSorted()
                .startsWith(1);
        assertThat(all).isSorted();
        assertThat(all).allSatisfy(caution -> assertThat(caution.authorities()).isNotEmpty());
    }

    @Test
    void cautions_sort_by_rank() {
        List<Caution> cautions = new ArrayList<>(List.of(
                CautionRule.CERTIFIED_WORK.caution(),
                CautionRule.NEVER_OXYGEN.caution(),
                CautionRule.FROSTBITE.caution()));

        Collections.sort(cautions);

        assertThat(cautions)
                .extracting(Caution::rule)
                .containsExactly(CautionRule.NEVER_OXYGEN, CautionRule.FROSTBITE, CautionRule.CERTIFIED_WORK);
    }

    /** ANSI/ASHRAE 15-1994, 10.1.2: never oxygen or air; regulator with relief. */
    @Test
    void before_a_pressure_test_oxygen_is_forbidden_and_the_regulator_demanded() {
        assertThat(before(Activity.PRESSURE_TESTING, Optional.empty()))
                .containsExactly(CautionRule.NEVER_OXYGEN, CautionRule.NITROGEN_REGULATOR, CautionRule.ASPHYXIATION);
        assertThat(CautionRule.NEVER_OXYGEN.signal()).isEqualTo(Signal.DANGER);
        assertThat(CautionRule.NEVER_OXYGEN.caution().needsAcknowledgement()).isTrue();
    }

    /** 40 CFR 82.154 and 82.161. */
    @Test
    void before_hoses_go_on_pressure_frostbite_venting_and_certification_are_named() {
        assertThat(before(Activity.CONNECTING_HOSES, Optional.of(Known.R410A)))
                .containsExactly(
                        CautionRule.HIGH_PRESSURE,
                        CautionRule.FROSTBITE,
                        CautionRule.VENTING_PROHIBITED,
                        CautionRule.CERTIFIED_WORK);
    }

    @Test
    void every_activity_names_its_own_danger() {
        assertThat(before(Activity.OPENING_ELECTRICAL, Optional.of(Known.R410A)))
                .containsExactly(CautionRule.CHARGED_CAPACITOR);
        assertThat(before(Activity.RECOVERING, Optional.of(Known.R410A)))
                .startsWith(CautionRule.CYLINDER_OVERFILL)
                .contains(CautionRule.VENTING_PROHIBITED, CautionRule.ASPHYXIATION);
        assertThat(before(Activity.CHARGING, Optional.of(Known.R410A)))
                .contains(CautionRule.FROSTBITE, CautionRule.HIGH_PRESSURE);
        assertThat(before(Activity.BRAZING, Optional.of(Known.R410A)))
                .contains(CautionRule.DECOMPOSITION_NEAR_FLAME, CautionRule.NEVER_OXYGEN);
        assertThat(before(Activity.EVACUATING, Optional.of(Known.R410A)))
                .containsExactly(CautionRule.VENTING_PROHIBITED, CautionRule.CERTIFIED_WORK);
    }

    /** ISO 817 and ASHRAE 34: R-410A A1, R-32 A2L, R-290 A3. */
    @ParameterizedTest
    @EnumSource(Activity.class)
    void flammable_refrigerants_are_named_whatever_is_done(Activity activity) {
        assertThat(before(activity, Optional.of(R32))).contains(CautionRule.FLAMMABLE_A2L);
        assertThat(before(activity, Optional.of(R290)))
                .contains(CautionRule.FLAMMABLE_A3)
                .doesNotContain(CautionRule.FLAMMABLE_A2L);
        assertThat(before(activity, Optional.of(Known.R410A)))
                .doesNotContain(CautionRule.FLAMMABLE_A2L, CautionRule.FLAMMABLE_A3);
    }

    @Test
    void an_unknown_refrigerant_is_not_taken_for_harmless() {
        assertThat(before(Activity.BRAZING, Optional.empty())).contains(CautionRule.FLAMMABLE_A2L);
    }

    /** The floor of 5 °F in equipment installation manuals. */
    @ParameterizedTest
    @CsvSource({"4.99, true", "5.0, false", "-2, true", "12, false"})
    void less_than_five_degrees_of_superheat_endangers_the_compressor(double superheat, boolean fires) {
        List<CautionRule> fired = rules(new Situation.Running(
                Optional.of(Known.R410A),
                Optional.of(TemperatureDifference.fahrenheit(superheat)),
                CautionFinder.LEAST_SAFE_SUPERHEAT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));

        assertThat(fired.contains(CautionRule.LIQUID_AT_COMPRESSOR)).isEqualTo(fires);
    }

    /** ANSI Z535: damage to property alone is a notice. */
    @Test
    void a_ruined_compressor_is_a_notice_that_needs_a_yes() {
        assertThat(CautionRule.LIQUID_AT_COMPRESSOR.signal()).isEqualTo(Signal.NOTICE);
        assertThat(CautionRule.LIQUID_AT_COMPRESSOR.caution().needsAcknowledgement())
                .isTrue();
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "31.9, 110, 180, COIL_BELOW_FREEZING",
        "33.9, 110, 180, COIL_BELOW_FREEZING",
        "40, 140, 180, NEAR_HIGH_PRESSURE_CUT_OUT",
        "40, 110, 225, DISCHARGE_TOO_HOT"
    })
    void running_conditions_at_their_limits_are_named(
            double evaporating, double condensing, double discharge, CautionRule rule) {
        assertThat(running(evaporating, condensing, discharge)).containsExactly(rule);
    }

    @Test
    void ordinary_running_needs_no_caution() {
        assertThat(running(34.1, 139.9, 224.9)).isEmpty();
    }

    @Test
    void nothing_known_fires_nothing() {
        assertThat(rules(new Situation.Running(
                        Optional.of(Known.R410A),
                        Optional.empty(),
                        CautionFinder.LEAST_SAFE_SUPERHEAT,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())))
                .isEmpty();
    }

    /** Beyond 0.985 of the critical temperature there is no saturation temperature; the pressure is still there. */
    @Test
    void a_pressure_beyond_every_saturation_is_still_a_high_pressure() {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            AbsolutePressure beyond = AbsolutePressure.pascals(
                    refrigerant.highestPressure(Side.BUBBLE).pascals() * 1.2);

            assertThat(rules(new Situation.Running(
                            Optional.of(refrigerant),
                            Optional.empty(),
                            CautionFinder.LEAST_SAFE_SUPERHEAT,
                            Optional.empty(),
                            Optional.of(beyond),
                            Optional.empty())))
                    .as(refrigerant.designation())
                    .containsExactly(CautionRule.NEAR_HIGH_PRESSURE_CUT_OUT);
        }
    }

    @Test
    void a_low_side_in_vacuum_is_below_freezing_though_nothing_boils_there() {
        assertThat(rules(new Situation.Running(
                        Optional.of(Known.R410A),
                        Optional.empty(),
                        CautionFinder.LEAST_SAFE_SUPERHEAT,
                        Optional.of(AbsolutePressure.pascals(100)),
                        Optional.empty(),
                        Optional.empty())))
                .containsExactly(CautionRule.COIL_BELOW_FREEZING);
    }

    @Test
    void a_hot_discharge_line_needs_no_refrigerant_to_be_known() {
        assertThat(rules(new Situation.Running(
                        Optional.empty(),
                        Optional.empty(),
                        CautionFinder.LEAST_SAFE_SUPERHEAT,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Temperature.fahrenheit(230)))))
                .containsExactly(CautionRule.DISCHARGE_TOO_HOT);
    }

    /** Nameplate low-side design pressure is the ceiling; 150 psig without one. Common practice. */
    @Test
    void a_test_pressure_above_the_plate_is_warned_of() {
        GaugePressure three = GaugePressure.psig(300);

        assertThat(rules(new Situation.PressureTesting(three, Optional.of(GaugePressure.psig(250)))))
                .contains(CautionRule.TEST_PRESSURE_ABOVE_PLATE);
        assertThat(rules(new Situation.PressureTesting(three, Optional.of(three))))
                .doesNotContain(CautionRule.TEST_PRESSURE_ABOVE_PLATE);
        assertThat(rules(new Situation.PressureTesting(three, Optional.empty())))
                .contains(CautionRule.TEST_PRESSURE_ABOVE_PLATE);
        assertThat(rules(new Situation.PressureTesting(GaugePressure.psig(150), Optional.empty())))
                .doesNotContain(CautionRule.TEST_PRESSURE_ABOVE_PLATE);
    }

    /** 49 CFR 173.304a and AHRI Guideline K, from memory: 80 %. */
    @Test
    void a_cylinder_is_warned_of_at_its_limit_and_while_its_filling_is_not_known() {
        assertThat(rules(new Situation.Recovering(Optional.of(Known.R410A), 1.0)))
                .startsWith(CautionRule.CYLINDER_OVERFILL);
        assertThat(rules(new Situation.Recovering(Optional.of(Known.R410A), 0.99)))
                .doesNotContain(CautionRule.CYLINDER_OVERFILL);
        assertThat(before(Activity.RECOVERING, Optional.of(Known.R410A))).startsWith(CautionRule.CYLINDER_OVERFILL);
        assertThat(before(Activity.CHARGING, Optional.of(Known.R410A))).doesNotContain(CautionRule.CYLINDER_OVERFILL);
        assertThat(rules(new Situation.Recovering(Optional.of(R32), 0.5))).contains(CautionRule.FLAMMABLE_A2L);
    }

    @Test
    void a_caution_that_defers_to_nobody_is_refused() {
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> new Caution(CautionRule.FROSTBITE, Signal.CAUTION, 1, true, List.of()));
    }

    private static List<CautionRule> running(double evaporating, double condensing, double discharge) {
        return rules(new Situation.Running(
                Optional.of(Known.R410A),
                Optional.of(TemperatureDifference.fahrenheit(10)),
                CautionFinder.LEAST_SAFE_SUPERHEAT,
                Optional.of(Known.R410A.saturationPressure(Side.DEW, Temperature.fahrenheit(evaporating))),
                Optional.of(Known.R410A.saturationPressure(Side.BUBBLE, Temperature.fahrenheit(condensing))),
                Optional.of(Temperature.fahrenheit(discharge))));
    }

    private static List<CautionRule> before(Activity activity, Optional<Refrigerant> refrigerant) {
        return rules(new Situation.Before(activity, refrigerant));
    }

    private static List<CautionRule> rules(Situation situation) {
        return CautionFinder.in(situation).stream().map(Caution::rule).toList();
    }
}
