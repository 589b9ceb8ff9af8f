package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.SafetyClass;
import readback.calc.measurement.Known;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Unit;

class RoomChargeTest {

    private static final Refrigerant R32 = Known.refrigerant("R-32");
    private static final Refrigerant R454B = Known.refrigerant("R-454B");

    /**
     * Pounds that need no room at all, and the most with detection, as a page on UL 60335-2-40 and ASHRAE 15.2 has
     * them.
     */
    @ParameterizedTest
    @CsvSource({"R-32, 4.05, 35.1", "R-454B, 3.91, 33.9"})
    void the_least_and_the_most_are_those_of_the_published_rule(String refrigerant, double least, double most) {
        RoomCharge huge = RoomCharge.of(Known.refrigerant(refrigerant), 1000).orElseThrow();

        assertThat(huge.unlimited().pounds()).isCloseTo(least, within(0.02));
        assertThat(huge.withDetection().pounds()).isCloseTo(most, within(0.15));
        assertThat(RoomCharge.of(Known.refrigerant(refrigerant), 1)
                        .orElseThrow()
                        .plain())
                .isEqualTo(huge.unlimited());
    }

    /** Tables of makers of ducted units: 10 lb of R-454B from 150 ft² with detection. From memory. */
    @Test
    void ten_pounds_of_r_454b_need_150_square_feet_with_detection() {
        assertThat(of(R454B, 149).withDetection().pounds()).isLessThan(10);
        assertThat(of(R454B, 151).withDetection().pounds()).isGreaterThan(10);
    }

    /** 2.5 · 0.307^1.25 · 1.8 m · √(20 m²) = 4.60 kg: worked by hand from the formula. */
    @Test
    void still_air_allows_less_than_stirred_air() {
        RoomCharge room = RoomCharge.of(R32, 20).orElseThrow();

        assertThat(room.plain().kilograms()).isCloseTo(4.60, within(0.01));
        assertThat(room.withDetection().kilograms()).isCloseTo(0.5 * 0.307 * 2.2 * 20, within(0.01));
        assertThat(room.judge(Mass.kilograms(4.5))).isEqualTo(RoomCharge.Outcome.ALLOWED);
        assertThat(room.judge(Mass.kilograms(5))).isEqualTo(RoomCharge.Outcome.ONLY_WITH_DETECTION);
        assertThat(room.judge(Mass.kilograms(7))).isEqualTo(RoomCharge.Outcome.TOO_MUCH);
        assertThat(room.judge(room.withDetection())).isEqualTo(RoomCharge.Outcome.ONLY_WITH_DETECTION);
    }

    @Test
    void a_room_matters_only_for_a_charge_above_the_least_of_a_refrigerant_that_burns() {
        assertThat(RoomCharge.matters(R32, Mass.kilograms(1.8))).isFalse();
        assertThat(RoomCharge.matters(R32, Mass.kilograms(1.9))).isTrue();
        assertThat(RoomCharge.matters(Known.R410A, Mass.kilograms(5))).isFalse();
        assertThat(RoomCharge.of(Known.R410A, 20)).isEmpty();
    }

    /** The rule is for A2L alone; what burns more readily has another one, and none is known here. */
    @Test
    void every_refrigerant_that_burns_slowly_has_a_limit_and_no_other() {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            assertThat(RoomCharge.of(refrigerant, 20).isPresent())
                    .as(refrigerant.designation())
                    .isEqualTo(refrigerant.safetyClass() == SafetyClass.A2L);
        }
    }

    /**
     * Le Chatelier's rule: the limit of a mixture, by volume, is one over the sum of mole fraction over limit of each
     * part. R-32 burns from 14.4 %, R-1234yf from 6.2 % (ISO 817, from memory); a mole of air at 23 °C is 24.3 l.
     * Published limits of blends lie below it by up to a fifteenth.
     *
     * @param r32 mass fraction; the rest is R-1234yf
     */
    @ParameterizedTest
    @CsvSource({"R-454A, 0.35", "R-454B, 0.689", "R-454C, 0.215"})
    void the_limits_of_blends_follow_from_their_parts(String designation, double r32) {
        double moles = r32 / 52.02;
        double others = (1 - r32) / 114.04;
        double volume = (moles + others) / (moles / 14.4 + others / 6.2) / 100;
        double limit = volume * 1 / (moles + others) / 24.3;

        assertThat(RoomCharge.of(Known.refrigerant(designation), 1)
                                .orElseThrow()
                                .unlimited()
                                .kilograms()
                        / 6)
                .isBetween(limit * 14 / 15, limit);
    }

    @Test
    void no_area_is_refused() {
        assertThatExceptionOfType(OutOfRangeException.class).isThrownBy(() -> RoomCharge.of(R32, 0));
    }

    private static RoomCharge of(Refrigerant refrigerant, double squareFeet) {
        return RoomCharge.of(refrigerant, Unit.SQUARE_FOOT.toBase(squareFeet)).orElseThrow();
    }
}
