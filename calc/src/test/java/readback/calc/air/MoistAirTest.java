package readback.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

class MoistAirTest {

    /** One row of the reference table: pressure, dry bulb, and what goes with them. */
    record Row(
            double p,
            double fahrenheit,
            double relativeHumidity,
            double wetBulb,
            double dewPoint,
            double humidityRatio,
            double enthalpy,
            double volume) {

        AbsolutePressure pressure() {
            return AbsolutePressure.pascals(p);
        }

        Temperature dryBulb() {
            return Temperature.fahrenheit(fahrenheit);
        }

        MoistAir air() {
            return MoistAir.fromRelativeHumidity(dryBulb(), relativeHumidity, pressure());
        }
    }

    static List<Row> rows() {
        String resource = "humid-air.csv";
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(MoistAirTest.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(MoistAirTest::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(String line) {
        double[] v = Arrays.stream(line.split(",", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        return new Row(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7]);
    }

    @Test
    void theReferenceTableIsReadWhole() {
        assertThat(rows()).hasSize(60);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void wetBulbAndDewPointFollowTheRelativeHumidity(Row row) {
        assertThat(row.air().wetBulb().kelvin()).isCloseTo(row.wetBulb(), within(0.05));
        assertThat(row.air().dewPoint().kelvin()).isCloseTo(row.dewPoint(), within(0.03));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void humidityRatioEnthalpyAndVolumeFollowTheRelativeHumidity(Row row) {
        // The ideal-gas relations leave out the enhancement factor, up to 0.6 %.
        assertThat(row.air().humidityRatio() / row.humidityRatio()).isCloseTo(1, within(0.006));
        assertThat(row.air().enthalpy()).isCloseTo(row.enthalpy(), within(1_000.0));
        assertThat(row.air().specificVolume() / row.volume()).isCloseTo(1, within(0.002));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void relativeHumidityFollowsTheWetBulb(Row row) {
        MoistAir air = MoistAir.fromWetBulb(row.dryBulb(), Temperature.kelvin(row.wetBulb()), row.pressure());

        // 0.05 K of wet bulb is up to 0.006 of relative humidity, in the coldest rows.
        assertThat(air.relativeHumidity()).isCloseTo(row.relativeHumidity(), within(0.006));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyWayInLeadsToTheSameAir(Row row) {
        MoistAir air = row.air();

        same(MoistAir.fromDewPoint(row.dryBulb(), air.dewPoint(), row.pressure()), air);
        same(MoistAir.fromHumidityRatio(row.dryBulb(), air.humidityRatio(), row.pressure()), air);
        same(MoistAir.fromWetBulb(row.dryBulb(), air.wetBulb(), row.pressure()), air);
    }

    private static void same(MoistAir air, MoistAir other) {
        assertThat(air.humidityRatio()).isCloseTo(other.humidityRatio(), within(1e-9));
        assertThat(air.wetBulb().kelvin()).isCloseTo(other.wetBulb().kelvin(), within(1e-6));
        assertThat(air.dryBulb()).isEqualTo(other.dryBulb());
        assertThat(air.pressure()).isEqualTo(other.pressure());
    }

    @ParameterizedTest
    @CsvSource({
        // Indoor and outdoor rating conditions of AHRI 210/240; relative humidities as commonly stated, no source.
        "80, 67, 0.51",
        "95, 75, 0.40",
        "75, 63, 0.51",
    })
    void ratingConditionsHaveTheirUsualHumidity(double dry, double wet, double relativeHumidity) {
        MoistAir air =
                MoistAir.fromWetBulb(Temperature.fahrenheit(dry), Temperature.fahrenheit(wet), Atmosphere.SEA_LEVEL);

        assertThat(air.relativeHumidity()).isCloseTo(relativeHumidity, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        // Pa: ASHRAE Handbook of Fundamentals 2017, chapter 1, table 3 (from memory)
        "-20, 103.24",
        "0, 611.15",
        "20, 2338.8",
        "40, 7383.8",
        "60, 19943.9",
    })
    void waterVapourSaturatesAtItsTabulatedPressure(double celsius, double pascals) {
        double kelvin = 273.15 + celsius;

        assertThat(WaterVapour.saturationPressure(kelvin) / pascals).isCloseTo(1, within(3e-4));
        assertThat(WaterVapour.saturationTemperature(WaterVapour.saturationPressure(kelvin)))
                .isCloseTo(kelvin, within(0.011));
    }

    @Test
    void iceAndWaterMeetAtTheTriplePoint() {
        // 611.657 Pa at 273.16 K: Guildner, Johnson and Jones, J. Res. NBS 80A, 505 (1976), from memory.
        assertThat(WaterVapour.saturationPressure(273.16)).isCloseTo(611.657, within(0.2));
        assertThat(WaterVapour.saturationPressure(273.16 - 1e-9)).isCloseTo(611.657, within(0.2));
        // Below it the pressure over ice is the smaller one; over water it would be 286.5 Pa at -10 °C.
        assertThat(WaterVapour.saturationPressure(263.15)).isCloseTo(259.9, within(0.2));
    }

    @Test
    void thinAirHoldsMoreWaterAtTheSameWetBulb() {
        Temperature dry = Temperature.fahrenheit(80);
        Temperature wet = Temperature.fahrenheit(60);
        MoistAir sea = MoistAir.fromWetBulb(dry, wet, Atmosphere.SEA_LEVEL);
        MoistAir mile = MoistAir.fromWetBulb(dry, wet, Atmosphere.atAltitude(1609));

        assertThat(mile.humidityRatio()).isGreaterThan(sea.humidityRatio() * 1.25);
        assertThat(mile.density()).isLessThan(sea.density() * 0.84);
    }

    @Test
    void standardAirWeighsTwelveHundredGramsACubicMetre() {
        // 0.075 lb/ft3, dry at 70 °F and sea level: AMCA and ASHRAE standard air.
        MoistAir air = MoistAir.fromHumidityRatio(Temperature.fahrenheit(70), 0, Atmosphere.SEA_LEVEL);

        assertThat(air.density()).isCloseTo(0.075 * 16.018463, within(0.003));
        assertThat(air.enthalpy()).isCloseTo(1_006 * 21.1111, within(1.0));
        assertThat(air.relativeHumidity()).isZero();
    }

    @Test
    void moistureAddsItsOwnWeight() {
        // 80 °F and 67 °F wet bulb at sea level: 0.01119 lb in 13.85 ft3 a lb of dry air (psychrometric chart).
        MoistAir air =
                MoistAir.fromWetBulb(Temperature.fahrenheit(80), Temperature.fahrenheit(67), Atmosphere.SEA_LEVEL);

        assertThat(air.density()).isCloseTo(1.01119 / 13.85 * 16.018463, within(0.001));
    }

    @Test
    void aRoundingErrorAboveSaturationIsSaturation() {
        Temperature dry = Temperature.celsius(20);
        double most =
                MoistAir.fromRelativeHumidity(dry, 1, Atmosphere.SEA_LEVEL).humidityRatio();

        assertThat(MoistAir.fromHumidityRatio(dry, most * (1 + 1e-12), Atmosphere.SEA_LEVEL)
                        .relativeHumidity())
                .isCloseTo(1, within(1e-12));
        assertThatThrownBy(() -> MoistAir.fromHumidityRatio(dry, most * 1.0001, Atmosphere.SEA_LEVEL))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void saturatedAirHasOneTemperature() {
        for (double celsius : new double[] {-30, -0.01, 0, 0.005, 0.02, 25, 60}) {
            Temperature dry = Temperature.celsius(celsius);
            MoistAir air = MoistAir.fromRelativeHumidity(dry, 1, Atmosphere.SEA_LEVEL);
            assertThat(air.wetBulb().kelvin()).as("%s °C", celsius).isCloseTo(dry.kelvin(), within(1e-9));
            assertThat(air.dewPoint().kelvin()).isCloseTo(dry.kelvin(), within(0.011));
            assertThat(air.relativeHumidity()).isCloseTo(1, within(1e-12));
            assertThat(MoistAir.fromWetBulb(dry, dry, Atmosphere.SEA_LEVEL).relativeHumidity())
                    .isCloseTo(1, within(1e-3));
        }
    }

    @Test
    void frostyAirFollowsTheIceBranch() {
        // By hand from equation 35 of ASHRAE 2017: -5 °C dry, -6 °C wet, W* = 0.002273 at 101325 Pa.
        MoistAir air = MoistAir.fromWetBulb(Temperature.celsius(-5), Temperature.celsius(-6), Atmosphere.SEA_LEVEL);
        double saturated = 0.621945 * 368.76 / (101_325 - 368.76);
        double expected = ((2830 + 0.24 * 6) * saturated - 1.006) / (2830 - 1.86 * 5 + 2.1 * 6);

        assertThat(air.humidityRatio()).isCloseTo(expected, within(3e-6));
        assertThat(air.wetBulb().celsius()).isEqualTo(-6, within(1e-9));
    }

    @Test
    void randomAirComesBackFromItsWetBulb() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            Temperature dry = Temperature.celsius(-40 + 100 * random.nextDouble());
            double humidity = 0.01 + 0.99 * random.nextDouble();
            AbsolutePressure pressure = AbsolutePressure.pascals(60_000 + 45_000 * random.nextDouble());
            MoistAir air = MoistAir.fromRelativeHumidity(dry, humidity, pressure);
            MoistAir back = MoistAir.fromWetBulb(dry, air.wetBulb(), pressure);

            assertThat(air.wetBulb()).as("seed %s, case %s", seed, i).isLessThanOrEqualTo(dry);
            assertThat(air.dewPoint().kelvin()).isLessThan(air.wetBulb().kelvin() + 0.011);
            assertThat(back.relativeHumidity()).as("seed %s, case %s", seed, i).isCloseTo(humidity, within(1e-6));
        }
    }

    @Test
    void aWetBulbAboveTheDryBulbIsRefused() {
        assertThatThrownBy(() -> MoistAir.fromWetBulb(
                        Temperature.fahrenheit(75), Temperature.fahrenheit(76), Atmosphere.SEA_LEVEL))
                .isInstanceOfSatisfying(OutOfRangeException.class, refused -> {
                    assertThat(refused.what()).startsWith("wet bulb at a dry bulb of");
                    assertThat(refused.value()).isCloseTo(297.594, within(0.001));
                    assertThat(refused.unit()).isEqualTo("K");
                });
    }

    @Test
    void aWetBulbOfAirDrierThanDryIsRefused() {
        // Dry air at 100 °F holds 24 Btu/lb above 0 °F; the saturation line has that at 56.6 °F (psychrometric chart).
        Temperature dry = Temperature.fahrenheit(100);

        assertThatThrownBy(() -> MoistAir.fromWetBulb(dry, Temperature.fahrenheit(56), Atmosphere.SEA_LEVEL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("without any water");
        double driest = MoistAir.fromHumidityRatio(dry, 0, Atmosphere.SEA_LEVEL)
                .wetBulb()
                .fahrenheit();
        assertThat(driest).isCloseTo(56.6, within(0.3));
    }

    @Test
    void otherCombinationsThatCannotBeAreRefused() {
        Temperature dry = Temperature.fahrenheit(75);
        AbsolutePressure sea = Atmosphere.SEA_LEVEL;

        refused(() -> MoistAir.fromRelativeHumidity(dry, 1.001, sea), "relative humidity 1.001");
        refused(() -> MoistAir.fromRelativeHumidity(dry, -0.001, sea), "relative humidity -0.001");
        refused(() -> MoistAir.fromRelativeHumidity(dry, Double.NaN, sea), "relative humidity NaN");
        refused(() -> MoistAir.fromDewPoint(dry, Temperature.fahrenheit(75.1), sea), "dew point at a dry bulb");
        refused(() -> MoistAir.fromDewPoint(dry, Temperature.kelvin(173), sea), "dew point at a dry bulb");
        refused(() -> MoistAir.fromHumidityRatio(dry, -1e-6, sea), "humidity ratio at a dry bulb");
        refused(() -> MoistAir.fromHumidityRatio(dry, 0.0190, sea), "humidity ratio at a dry bulb");
        refused(() -> MoistAir.fromHumidityRatio(dry, Double.NaN, sea), "humidity ratio at a dry bulb");
        refused(() -> MoistAir.fromRelativeHumidity(Temperature.celsius(-50.1), 0.5, sea), "dry bulb 223.0");
        refused(() -> MoistAir.fromRelativeHumidity(Temperature.celsius(90.1), 0.5, sea), "dry bulb 363.2");
        refused(
                () -> MoistAir.fromRelativeHumidity(Temperature.celsius(85), 0.5, AbsolutePressure.pascals(57_000)),
                "at which water boils");
    }

    @Test
    void theLimitsThemselvesAreAdmitted() {
        AbsolutePressure sea = Atmosphere.SEA_LEVEL;

        assertThat(MoistAir.fromRelativeHumidity(Temperature.kelvin(223.15), 1, sea)
                        .humidityRatio())
                .isPositive();
        assertThat(MoistAir.fromRelativeHumidity(Temperature.kelvin(363.15), 0, sea)
                        .humidityRatio())
                .isZero();
        assertThat(MoistAir.fromDewPoint(Temperature.celsius(20), Temperature.kelvin(173.15), sea)
                        .dewPoint()
                        .kelvin())
                .isCloseTo(173.15, within(1e-6));
    }

    @Test
    void airWithoutWaterHasNoDewPoint() {
        MoistAir air = MoistAir.fromHumidityRatio(Temperature.celsius(20), 0, Atmosphere.SEA_LEVEL);

        assertThatThrownBy(air::dewPoint)
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("vapour pressure for a dew point 0.0 Pa");
    }

    private static void refused(Runnable air, String message) {
        assertThatThrownBy(air::run).isInstanceOf(OutOfRangeException.class).hasMessageContaining(message);
    }
}
