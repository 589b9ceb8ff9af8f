package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
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
        return (WeighIn.Target.Charge) WeighIn.target(
                R410A, Mass.ounces(100), built, included, WeighIn.Driers.usual(driers), Optional.empty());
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
        assertThat(WeighIn.target(
                        R410A,
                        Mass.ounces(100),
                        line(0.45, 30),
                        line(0.375, 15),
                        WeighIn.Driers.NONE,
                        Optional.empty()))
                .isInstanceOf(WeighIn.Target.UnknownTube.class);
        assertThat(WeighIn.target(
                        R410A, Mass.ounces(5), line(0.375, 3), line(0.375, 25), WeighIn.Driers.NONE, Optional.empty()))
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

    /** A figure that the maker states comes before a published one; of a thinner included line by the bores of B280. */
    @Test
    void the_makers_figure_comes_first() {
        WeighIn.Target.Charge same = makers(0.8, line(0.375, 35), line(0.375, 15));
        WeighIn.Target.Charge thinner = makers(1.2, line(0.5, 75), line(0.375, 15));

        assertThat(same.basis()).isEqualTo(WeighIn.Basis.MAKER);
        assertThat(same.adjustment().ounces()).isCloseTo(0.8 * 20, within(1e-6));
        // 1.2 oz/ft less 1.2 · (0.522 + 0.077) / (1.027 + 0.077) oz/ft for 15 ft: liquid of 61.9, vapour of 2.0 lb/ft³
        assertThat(thinner.adjustment().ounces()).isCloseTo(1.2 * 75 - 1.2 * 0.599 / 1.104 * 15, within(0.3));
    }

    /** 5/8 to 7/8 in. of vapour at 2.0 lb/ft³ (from memory) are 0.054 to 0.108 oz/ft: an ounce in 18.5 ft. */
    @ParameterizedTest
    @CsvSource({"12, false", "30, true"})
    void the_suction_line_matters_where_one_size_makes_more_than_an_ounce(double feet, boolean matters) {
        assertThat(WeighIn.suctionMatters(R410A, Mass.ounces(100), line(0.375, feet)))
                .isEqualTo(matters);
        assertThat(WeighIn.suctionMatters(R410A, Mass.ounces(100), line(0.45, feet)))
                .isFalse();
    }

    /** 50 ft of 7/8 in. in place of 3/4 in. are 50 · (0.108 − 0.077) oz more, of vapour at 2.0 lb/ft³ (from memory). */
    @Test
    void a_computed_charge_counts_the_suction_line() {
        WeighIn.Line usual = line(0.625, 50);
        WeighIn.Line thick = new WeighIn.Line(usual.liquidTubeMetres(), Unit.INCH.toBase(0.875), usual.lengthMetres());

        double more = charge(thick, line(0.375, 15), 0).total().ounces()
                - charge(usual, line(0.375, 15), 0).total().ounces();

        assertThat(more).isCloseTo(50 * (0.108 - 0.077), within(0.3));
    }

    /** A maker's three ounces for each of two driers. */
    @Test
    void a_drier_counts_what_its_maker_states() {
        WeighIn.Target target = WeighIn.target(
                R410A,
                Mass.ounces(100),
                line(0.375, 15),
                line(0.375, 15),
                new WeighIn.Driers(2, Mass.ounces(3)),
                Optional.empty());

        assertThat(target.charge().orElseThrow().total().ounces()).isCloseTo(106, within(1e-6));
    }

    private static WeighIn.Target.Charge makers(double ouncesPerFoot, WeighIn.Line built, WeighIn.Line included) {
        return WeighIn.target(
                        R410A,
                        Mass.ounces(100),
                        built,
                        included,
                        WeighIn.Driers.NONE,
                        Optional.of(Unit.OUNCE_PER_FOOT.toBase(ouncesPerFoot)))
                .charge()
                .orElseThrow();
    }
}
