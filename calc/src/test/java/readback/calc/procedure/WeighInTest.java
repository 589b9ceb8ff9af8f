package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Unit;

class WeighInTest {

    private static final Refrigerant R410A =
            ((Lookup.Found) Catalogue.standard().find("R-410A")).refrigerant();

    private static WeighIn.Line line(double inches, double feet) {
        return new WeighIn.Line(Unit.INCH.toBase(inches), Unit.FOOT.toBase(feet));
    }

    private static WeighIn.Target.Charge charge(WeighIn.Line built, WeighIn.Line included, int driers) {
        return (WeighIn.Target.Charge) WeighIn.target(R410A, Mass.ounces(100), built, included, driers);
    }

    /** Worked example of an equipment manual: 75 ft of 1/2 in., 15 ft of 3/8 in. included, 5 lb 1 oz more. */
    @Test
    void a_thicker_line_than_the_included_one_is_charged_by_both_sizes() {
        WeighIn.Target.Charge charge = charge(line(0.5, 75), line(0.375, 15), 0);

        assertThat(charge.adjustment().ounces()).isCloseTo(81, within(1e-6));
        assertThat(charge.total().ounces()).isCloseTo(181, within(1e-6));
        assertThat(charge.basis()).isEqualTo(WeighIn.Basis.PUBLISHED);
    }

    /** The same manuals: 3 oz for each 5 ft beyond 15 ft of 3/8 in., and 6 oz for each filter-drier. */
    @ParameterizedTest
    @CsvSource({"35, 0, 12, 112", "10, 0, -3, 97", "35, 2, 12, 124"})
    void length_and_filter_driers_count(double feet, int driers, double adjustment, double total) {
        WeighIn.Target.Charge charge = charge(line(0.375, feet), line(0.375, 15), driers);

        assertThat(charge.adjustment().ounces()).isCloseTo(adjustment, within(1e-6));
        assertThat(charge.total().ounces()).isCloseTo(total, within(1e-6));
    }

    @Test
    void one_size_without_a_published_figure_makes_both_computed() {
        assertThat(charge(line(0.625, 30), line(0.375, 15), 0).basis()).isEqualTo(WeighIn.Basis.COMPUTED);
    }

    @Test
    void a_tube_of_no_standard_size_and_a_line_too_short_are_told() {
        assertThat(WeighIn.target(R410A, Mass.ounces(100), line(0.45, 30), line(0.375, 15), 0))
                .isInstanceOf(WeighIn.Target.UnknownTube.class);
        assertThat(WeighIn.target(R410A, Mass.ounces(5), line(0.375, 3), line(0.375, 25), 0))
                .isInstanceOf(WeighIn.Target.NothingLeft.class);
    }

    @ParameterizedTest
    @CsvSource({
        "50, 49, ON_TARGET",
        "50, 51, ON_TARGET",
        "50, 48.9, SHORT",
        "50, 51.1, OVER",
        "300, 303, ON_TARGET",
        "300, 303.1, OVER",
        "300, 296.9, SHORT"
    })
    void an_ounce_or_one_hundredth_is_allowed(double target, double weighed, WeighIn.Outcome outcome) {
        assertThat(WeighIn.judge(Mass.ounces(target), Mass.ounces(weighed))).isEqualTo(outcome);
    }
}
