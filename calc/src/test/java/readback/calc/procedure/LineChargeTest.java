package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.circuit.TubeSize;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Known;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Unit;

class LineChargeTest {

    /** Worked example of an equipment manual: 75 ft of 1/2 in., unit charged for 15 ft of 3/8 in.: 5 lb 1 oz. */
    @Test
    void seventy_five_feet_of_half_inch_need_81_ounces_more() {
        assertThat(adjust(0.5, 75, 0.375, 15).ounces()).isCloseTo(81, within(1e-9));
    }

    /** Equipment manual: 3 oz for each 5 ft of 3/8 in. from 15 ft. */
    @ParameterizedTest
    @CsvSource({"35, 12", "10, -3", "15, 0"})
    void three_eighths_inch_takes_three_ounces_for_each_five_feet_from_fifteen(double feet, double ounces) {
        assertThat(adjust(0.375, feet, 0.375, 15).ounces()).isCloseTo(ounces, within(1e-9));
    }

    /** Figures of the same manuals. */
    @ParameterizedTest
    @CsvSource({"R-410A, 0.25, 0.3", "R-410A, 0.3125, 0.4", "R-410A, 0.375, 0.6", "R-410A, 0.5, 1.2", "R-22, 0.375, 0.6"
    })
    void published_rates_are_found_by_refrigerant_and_tube(String refrigerant, double inches, double ouncesPerFoot) {
        assertThat(rate(Known.refrigerant(refrigerant), inches)).isCloseTo(perMetre(ouncesPerFoot), within(1e-12));
    }

    @Test
    void a_rate_that_was_not_published_must_be_asked() {
        assertThat(LineCharge.kilogramsPerMetre(Known.R22, Unit.INCH.toBase(0.5)))
                .isEmpty();
        assertThat(LineCharge.kilogramsPerMetre(Known.R410A, Unit.INCH.toBase(0.4)))
                .isEmpty();
    }

    /**
     * ASTM B280: 3/8 in. type A has 0.311 in. bore, 3/4 in. 0.680. Saturated R-410A liquid at 100 °F weighs 61.9
     * lb/ft³, vapour in the suction line about 2.0 (from memory): 0.522 + 0.08 oz/ft.
     */
    @Test
    void the_published_rate_is_what_the_bore_of_the_tubes_holds() {
        double computed =
                LineCharge.computedKilogramsPerMetre(Known.R410A, TubeSize.THREE_EIGHTHS, TubeSize.THREE_QUARTERS);

        assertThat(computed)
                .isCloseTo(perMetre(bore(0.311) * 61.9 * 16 + bore(0.68) * 2.0 * 16), within(perMetre(0.01)));
        // published to a tenth of an ounce
        assertThat(computed).isCloseTo(rate(Known.R410A, 0.375), within(perMetre(0.05)));
    }

    /**
     * Liquid at 100 °F of 56.4 and 58.4 lb/ft³ (from memory): 0.476 and 0.493 oz/ft in 3/8 in., and the vapour beside
     * it.
     */
    @ParameterizedTest
    @CsvSource({"R-32, 0.476, 0.05", "R-454B, 0.493, 0.07"})
    void refrigerants_without_a_published_rate_get_a_computed_one(
            String refrigerant, double liquidOuncesPerFoot, double vapourOuncesPerFoot) {
        assertThat(LineCharge.computedKilogramsPerMetre(
                        Known.refrigerant(refrigerant), TubeSize.THREE_EIGHTHS, TubeSize.THREE_QUARTERS))
                .isCloseTo(perMetre(liquidOuncesPerFoot + vapourOuncesPerFoot), within(perMetre(0.02)));
    }

    /** California Energy Commission RA3.2; 6 oz a filter-drier: equipment manual. */
    @Test
    void the_charge_to_weigh_in_is_nameplate_line_and_driers() {
        Mass total = LineCharge.weighIn(Mass.pounds(7), Mass.ounces(12), LineCharge.FILTER_DRIER.times(2));

        assertThat(total.ounces()).isCloseTo(7 * 16 + 12 + 12, within(1e-9));
        assertThat(LineCharge.weighIn(Mass.pounds(7), Mass.ounces(-3), Mass.NONE)
                        .ounces())
                .isCloseTo(109, within(1e-9));
    }

    @Test
    void a_charge_of_nothing_or_less_is_refused() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LineCharge.weighIn(Mass.ounces(3), Mass.ounces(-3), Mass.NONE));
    }

    @Test
    void negative_lengths_and_rates_are_refused_by_name() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LineCharge.adjustment(-1, 1, 1, 1))
                .withMessageContaining("charge per length");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LineCharge.adjustment(1, -1, 1, 1))
                .withMessageContaining("line length");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LineCharge.adjustment(1, 1, -1, 1))
                .withMessageContaining("included charge");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LineCharge.adjustment(1, 1, 1, -1))
                .withMessageContaining("included line");
    }

    private static Mass adjust(double inches, double feet, double includedInches, double includedFeet) {
        return LineCharge.adjustment(
                rate(Known.R410A, inches),
                Unit.FOOT.toBase(feet),
                rate(Known.R410A, includedInches),
                Unit.FOOT.toBase(includedFeet));
    }

    private static double rate(Refrigerant refrigerant, double inches) {
        return LineCharge.kilogramsPerMetre(refrigerant, Unit.INCH.toBase(inches))
                .orElseThrow();
    }

    private static double perMetre(double ouncesPerFoot) {
        return Unit.OUNCE.toBase(ouncesPerFoot) / Unit.FOOT.toBase(1);
    }

    /** Square feet. */
    private static double bore(double inches) {
        return Math.PI / 4 * (inches / 12) * (inches / 12);
    }
}
