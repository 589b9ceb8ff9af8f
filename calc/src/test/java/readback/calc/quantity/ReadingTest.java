package readback.calc.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReadingTest {

    @ParameterizedTest
    @CsvSource({
        // NIST SP 811 (2008), appendix B, in the SI base unit of the dimension
        "PSIG, 1, 6894.757293168",
        "PSIA, 1, 6894.757293168",
        "BAR_GAUGE, 1, 100000",
        "KILOPASCAL_GAUGE, 1, 1000",
        "MEGAPASCAL_GAUGE, 1, 1000000",
        "KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_GAUGE, 1, 98066.5",
        "INCH_MERCURY_VACUUM, 10, -33863.89",
        "INCH_MERCURY_ABSOLUTE, 1, 3386.389",
        "INCH_WATER, 1, 249.0889",
        "MICRON, 1000, 133.3224",
        "KILOPASCAL_ABSOLUTE, 1, 1000",
        "FAHRENHEIT, 212, 373.15",
        "CELSIUS, 0, 273.15",
        "FAHRENHEIT_DEGREES, 1.8, 1",
        "KELVINS, 1, 1",
        "OUNCE, 16, 0.45359237",
        "POUND, 1, 0.45359237",
        "POUND_AND_OUNCES, 1, 0.45359237",
        "GRAM, 1, 0.001",
        "KILOGRAM, 1, 1",
        "INCH, 1, 0.0254",
        "FOOT, 1, 0.3048",
        "MILLIMETRE, 1, 0.001",
        "METRE, 1, 1",
        "SECOND, 1, 1",
        "MINUTE, 1, 60",
        "HOUR, 1, 3600",
        "CUBIC_FOOT_PER_MINUTE, 1, 0.0004719474432",
        "CUBIC_METRE_PER_HOUR, 3600, 1",
        "SQUARE_FOOT, 1, 0.09290304",
        "SQUARE_METRE, 1, 1",
        "OUNCE_PER_FOOT, 16, 1.4881639435696",
        "GRAM_PER_METRE, 56, 0.056",
        "AMPERE, 1, 1",
        "VOLT, 1, 1",
        "TON_OF_REFRIGERATION, 1, 3516.85284206",
        "BTU_PER_HOUR, 1, 0.29307107017",
        "KILOWATT, 1, 1000",
        "PERCENT, 50, 0.5",
    })
    void everyUnitHasItsPublishedFactor(Unit unit, double value, double base) {
        assertThat(unit.toBase(value)).isCloseTo(base, within(1e-9 * Math.abs(base)));
    }

    /** A pound is sixteen ounces: NIST SP 811 (2008), appendix B. */
    @ParameterizedTest
    @CsvSource({"116, 7.25", "116.5, 7.28125", "112, 7", "0.1, 0.00625", "320, 20"})
    void poundsAndOuncesAreExactAndGoBackToOunces(String ounces, String pounds) {
        Reading both = Reading.poundsAndOunces(Quantity.NAMEPLATE_CHARGE, new BigDecimal(ounces));
        assertThat(both).isEqualTo(new Reading(Quantity.NAMEPLATE_CHARGE, new BigDecimal(pounds), both.unit()));
        assertThat(both.inOneUnit()).isEqualTo(Reading.of(Quantity.NAMEPLATE_CHARGE, ounces));
        assertThat(both.base())
                .isCloseTo(Mass.ounces(Double.parseDouble(ounces)).kilograms(), within(1e-12));
    }

    @Test
    void aComputedValueIsRoundedToTheHundredthOfAnOunceInPoundsAndOunces() {
        Reading both = Reading.poundsAndOunces(Quantity.REFRIGERANT_ADDED, new BigDecimal("20"));
        assertThat(both.withBase(Mass.ounces(20.003).kilograms())).isEqualTo(both);
        assertThat(Reading.of(Quantity.REFRIGERANT_ADDED, "6")
                        .withBase(Mass.ounces(20.006).kilograms()))
                .isEqualTo(Reading.of(Quantity.REFRIGERANT_ADDED, "20.01"));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitConvertsThereAndBack(Unit unit) {
        assertThat(unit.fromBase(unit.toBase(37.5))).isCloseTo(37.5, within(1e-9));
        assertThat(unit.symbol()).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void theUsualUnitMeasuresItsQuantity(Quantity quantity) {
        assertThat(quantity.usualUnit().dimension()).isEqualTo(quantity.dimension());
        assertThat(UnitSetting.US.unitOf(quantity).dimension()).isEqualTo(quantity.dimension());
        assertThat(UnitSetting.METRIC.unitOf(quantity).dimension()).isEqualTo(quantity.dimension());
    }

    @Test
    void theSettingDecidesPressureTemperatureAndDifference() {
        assertThat(UnitSetting.US.unitOf(Quantity.SUCTION_PRESSURE)).isEqualTo(Unit.PSIG);
        assertThat(UnitSetting.METRIC.unitOf(Quantity.SUCTION_PRESSURE)).isEqualTo(Unit.BAR_GAUGE);
        assertThat(UnitSetting.METRIC.unitOf(Quantity.OUTDOOR_TEMPERATURE)).isEqualTo(Unit.CELSIUS);
        assertThat(UnitSetting.METRIC.unitOf(Quantity.PLATE_SUBCOOLING)).isEqualTo(Unit.KELVINS);
        assertThat(UnitSetting.US.unitOf(Quantity.PLATE_SUBCOOLING)).isEqualTo(Unit.FAHRENHEIT_DEGREES);
        assertThat(UnitSetting.METRIC.unitOf(Quantity.STATIC_PRESSURE)).isEqualTo(Unit.INCH_WATER);
        assertThat(UnitSetting.METRIC.unitOf(Quantity.VACUUM_LEVEL)).isEqualTo(Unit.MICRON);
    }

    @Test
    void aSettingOfWrongUnitsIsRefused() {
        assertThatThrownBy(() -> new UnitSetting(Unit.PSIA, Unit.CELSIUS)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UnitSetting(Unit.PSIG, Unit.KELVINS)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void keepsTheDigitsThatWereStated() {
        Reading reading = Reading.of(Quantity.SUCTION_PRESSURE, "118.50");

        assertThat(reading.value()).isEqualTo(new BigDecimal("118.50"));
        assertThat(reading).hasToString("SUCTION_PRESSURE 118.50 psig");
        assertThat(reading.in(Unit.PSIG)).isEqualTo(118.5);
        assertThat(reading.in(Unit.BAR_GAUGE)).isCloseTo(8.1703, within(1e-4));
        assertThat(reading.gaugePressure().psig()).isCloseTo(118.5, within(1e-9));
    }

    @Test
    void becomesTheValueOfItsDimension() {
        assertThat(Reading.of(Quantity.OUTDOOR_TEMPERATURE, "95").temperature().fahrenheit())
                .isCloseTo(95, within(1e-9));
        assertThat(Reading.of(Quantity.PLATE_SUBCOOLING, "10")
                        .temperatureDifference()
                        .fahrenheit())
                .isCloseTo(10, within(1e-9));
        assertThat(Reading.of(Quantity.VACUUM_LEVEL, "500").absolutePressure())
                .isEqualTo(AbsolutePressure.microns(500));
    }

    @Test
    void refusesToBecomeAnythingElse() {
        Reading pressure = Reading.of(Quantity.SUCTION_PRESSURE, "118");
        Reading temperature = Reading.of(Quantity.OUTDOOR_TEMPERATURE, "95");

        assertThatThrownBy(pressure::temperature).hasMessageContaining("is a GAUGE_PRESSURE, not a TEMPERATURE");
        assertThatThrownBy(pressure::temperatureDifference).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(pressure::absolutePressure).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(temperature::gaugePressure).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> temperature.in(Unit.PSIG)).hasMessageContaining("cannot be stated in");
    }

    @Test
    void aUnitOfAnotherDimensionIsRefused() {
        assertThatThrownBy(() -> new Reading(Quantity.SUCTION_PRESSURE, BigDecimal.ONE, Unit.CELSIUS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("CELSIUS measures TEMPERATURE");
    }
}
