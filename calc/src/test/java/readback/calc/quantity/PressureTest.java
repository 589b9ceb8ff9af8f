package readback.calc.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PressureTest {

    private static final AbsolutePressure DENVER = AbsolutePressure.psia(12.1);

    @Test
    void gaugeBecomesAbsoluteWithTheLocalAir() {
        assertThat(GaugePressure.psig(118).absoluteIn(Atmosphere.SEA_LEVEL).psia())
                .isCloseTo(132.696, within(0.001));
        assertThat(GaugePressure.psig(118).absoluteIn(DENVER).psia()).isCloseTo(130.1, within(1e-9));
    }

    @Test
    void absoluteBecomesGaugeAgain() {
        assertThat(AbsolutePressure.psia(130.1).gaugeIn(DENVER).psig()).isCloseTo(118, within(1e-9));
        assertThat(AbsolutePressure.psia(5).gaugeIn(DENVER).psig()).isCloseTo(-7.1, within(1e-9));
    }

    @Test
    void aVacuumDeeperThanTheAtmosphereIsRefused() {
        GaugePressure impossible = GaugePressure.psig(-13.3);

        assertThatThrownBy(() -> impossible.absoluteIn(DENVER))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("absolute pressure")
                .hasMessageContaining("above 0 Pa");
    }

    @Test
    void inchesOfMercuryCountDownwardsFromTheLocalAir() {
        // 1 psi is 2.03602 inHg: NIST SP 811 (2008), appendix B.
        assertThat(GaugePressure.psig(-1).inchesOfMercuryVacuum()).isCloseTo(2.03602, within(1e-5));
    }

    @Test
    void micronsAreThousandthsOfAMillimetreOfMercury() {
        // 760 mm of mercury are one standard atmosphere, within the conventional mercury density.
        assertThat(AbsolutePressure.microns(760_000).pascals()).isCloseTo(101_325, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void anAbsolutePressureThatCannotBeIsRefused(double pascals) {
        assertThatThrownBy(() -> AbsolutePressure.pascals(pascals))
                .isInstanceOfSatisfying(OutOfRangeException.class, refused -> {
                    assertThat(refused.what()).isEqualTo("absolute pressure");
                    assertThat(refused.value()).isEqualTo(Double.valueOf(pascals));
                    assertThat(refused.unit()).isEqualTo("Pa");
                    assertThat(refused.limit()).isEqualTo("above 0 Pa");
                });
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aGaugePressureThatIsNoNumberIsRefused(double pascals) {
        assertThatThrownBy(() -> GaugePressure.pascals(pascals))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("finite");
    }

    @Test
    void pressuresCompare() {
        assertThat(AbsolutePressure.psia(2)).isGreaterThan(AbsolutePressure.psia(1));
        assertThat(GaugePressure.psig(-2)).isLessThan(GaugePressure.psig(1));
        assertThat(GaugePressure.psig(1)).isEqualByComparingTo(GaugePressure.psig(1));
    }

    @ParameterizedTest
    @CsvSource({
        // feet, psia: standard atmosphere 1976 after 101325 (1 - 6.8755856e-6 ft)^5.2558797
        "0, 14.696",
        "2000, 13.664",
        "5280, 12.100",
        "7000, 11.340",
        "-1000, 15.235",
    })
    void theAirThinsWithAltitude(double feet, double psia) {
        assertThat(Atmosphere.atAltitude(Unit.FOOT.toBase(feet)).psia()).isCloseTo(psia, within(0.002));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500.1, 6_000.1, Double.NaN})
    void anAltitudeWhereNobodyWorksIsRefused(double metres) {
        assertThatThrownBy(() -> Atmosphere.atAltitude(metres))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("altitude")
                .hasMessageContaining("-500.0 to 6000.0 m");
    }

    @Test
    void theLimitsOfAltitudeAreAdmitted() {
        assertThat(Atmosphere.atAltitude(-500)).isGreaterThan(Atmosphere.SEA_LEVEL);
        assertThat(Atmosphere.atAltitude(6_000)).isLessThan(Atmosphere.SEA_LEVEL);
    }
}
