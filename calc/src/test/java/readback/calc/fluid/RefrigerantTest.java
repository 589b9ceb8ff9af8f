package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import readback.calc.fluid.ReferenceTable.Row;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

class RefrigerantTest {

    private final Refrigerant r22 = refrigerant("R-22");
    private final Refrigerant r410a = refrigerant("R-410A");
    private final Refrigerant r407c = refrigerant("R-407C");
    private final Refrigerant r454b = refrigerant("R-454B");

    private static Refrigerant refrigerant(String name) {
        assertThat(Catalogue.standard().find(name)).isInstanceOf(Lookup.Found.class);
        return ((Lookup.Found) Catalogue.standard().find(name)).refrigerant();
    }

    @Test
    void saturationTemperaturesMeetTheReferenceTableWithinAMillikelvin() {
        for (Row row : ReferenceTable.read("saturation-by-pressure.csv").rows()) {
            if (servedBy(row)) {
                Refrigerant refrigerant = refrigerant(row.text("refrigerant"));
                AbsolutePressure pressure = AbsolutePressure.pascals(row.number("p"));
                // The table reaches closer to the critical point than the refrigerants answer.
                if (pressure.compareTo(refrigerant.highestPressure(Side.DEW)) < 0) {
                    assertThat(refrigerant.bubbleTemperature(pressure).kelvin())
                            .as("%s", row)
                            .isCloseTo(row.number("tBubble"), within(1e-3));
                    assertThat(refrigerant.dewTemperature(pressure).kelvin())
                            .as("%s", row)
                            .isCloseTo(row.number("tDew"), within(1e-3));
                }
            }
        }
    }

    @Test
    void propertiesOfSinglePhasesMeetTheReferenceTable() {
        for (Row row : ReferenceTable.read("single-phase.csv").rows()) {
            if (servedBy(row)) {
                Refrigerant refrigerant = refrigerant(row.text("refrigerant"));
                Temperature temperature = Temperature.fahrenheit(row.number("fahrenheit"));
                AbsolutePressure pressure = AbsolutePressure.pascals(row.number("p"));
                FluidState state = row.text("region").equals("subcooled_liquid")
                        ? refrigerant.subcooledLiquid(temperature, pressure)
                        : refrigerant.superheatedVapour(temperature, pressure);
                assertThat(state.density() / row.number("rho")).as("%s", row).isCloseTo(1, within(1e-6));
                assertThat(state.enthalpy() / row.number("h")).as("%s", row).isCloseTo(1, within(1e-6));
                assertThat(state.entropy() / row.number("s")).as("%s", row).isCloseTo(1, within(1e-6));
                assertThat(state.heatCapacity() / row.number("cp"))
                        .as("%s", row)
                        .isCloseTo(1, within(1e-6));
                assertThat(state.temperature()).isEqualTo(temperature);
                assertThat(state.pressure().pascals() / row.number("p")).isCloseTo(1, within(1e-9));
            }
        }
    }

    /** The tables hold the pseudo-pure blends by their mixture model as well, which does not serve them here. */
    private static boolean servedBy(Row row) {
        Refrigerant refrigerant = refrigerant(row.text("refrigerant"));
        return row.text("model").equals("mixture") == (refrigerant.model() instanceof MixtureSaturation);
    }

    @Test
    void speedOfSoundMeetsPublishedValues() {
        // Lemmon 2003, table V, doi 10.1023/A:1025048800563 (second-hand transcription): R-410A saturated at 300 K.
        assertThat(r410a.saturatedLiquid(Temperature.kelvin(300)).speedOfSound())
                .isCloseTo(418.60, within(0.005));
        assertThat(r410a.saturatedVapour(Temperature.kelvin(300)).speedOfSound())
                .isCloseTo(160.94, within(0.005));
    }

    @Test
    void normalBoilingPointsMeetTheHandbooks() {
        // ASHRAE Standard 34, normal boiling points in °C, from memory.
        boilsAtOneAtmosphere("R-22", -40.8);
        boilsAtOneAtmosphere("R-134a", -26.1);
        boilsAtOneAtmosphere("R-32", -51.7);
        boilsAtOneAtmosphere("R-290", -42.1);
        boilsAtOneAtmosphere("R-600a", -11.7);
        boilsAtOneAtmosphere("R-410A", -51.4);
        boilsAtOneAtmosphere("R-1234yf", -29.5);
    }

    private static void boilsAtOneAtmosphere(String name, double celsius) {
        assertThat(refrigerant(name)
                        .bubbleTemperature(AbsolutePressure.pascals(101_325))
                        .celsius())
                .as(name)
                .isCloseTo(celsius, within(0.15));
    }

    @Test
    void theWrongSideOfABlendIsWrongByItsGlide() {
        AbsolutePressure pressure = r407c.dewPressure(Temperature.fahrenheit(40));

        // Both from the reference values: dew 40 °F, glide 11.1 °F.
        assertThat(r407c.glide(pressure).fahrenheit()).isCloseTo(11.1, within(0.1));
        assertThat(r407c.bubbleTemperature(pressure).fahrenheit()).isCloseTo(28.9, within(0.1));
    }

    @Test
    void aPureRefrigerantHasNoGlide() {
        assertThat(r22.glide(AbsolutePressure.psia(100)).kelvins()).isZero();
        assertThat(r22.blend()).isFalse();
        assertThat(r454b.blend()).isTrue();
    }

    @Test
    void bothSidesAreReachedByName() {
        AbsolutePressure pressure = AbsolutePressure.psia(100);
        Temperature temperature = Temperature.fahrenheit(50);

        assertThat(r407c.saturationTemperature(Side.DEW, pressure)).isEqualTo(r407c.dewTemperature(pressure));
        assertThat(r407c.saturationTemperature(Side.BUBBLE, pressure)).isEqualTo(r407c.bubbleTemperature(pressure));
        assertThat(r407c.saturationPressure(Side.DEW, temperature)).isEqualTo(r407c.dewPressure(temperature));
        assertThat(r407c.saturationPressure(Side.BUBBLE, temperature)).isEqualTo(r407c.bubblePressure(temperature));
        assertThat(r407c.bubblePressure(temperature)).isGreaterThan(r407c.dewPressure(temperature));
    }

    @Test
    void theLimitsThemselvesAreInRange() {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            for (Side side : Side.values()) {
                AbsolutePressure lowest = refrigerant.lowestPressure(side);
                AbsolutePressure highest = refrigerant.highestPressure(side);
                assertThat(refrigerant.saturationTemperature(side, lowest).kelvin())
                        .isCloseTo(200, within(1e-5));
                assertThat(refrigerant.saturationTemperature(side, highest).kelvin())
                        .isCloseTo(refrigerant.highestTemperature().kelvin(), within(5e-5));
                refrigerant.saturationPressure(side, refrigerant.lowestTemperature());
                refrigerant.saturationPressure(side, refrigerant.highestTemperature());
            }
        }
    }

    @Test
    void aPressureAboveTheRangeIsRefusedWithValueUnitAndLimit() {
        assertThatThrownBy(() -> r410a.dewTemperature(AbsolutePressure.pascals(4_902_000)))
                .isInstanceOfSatisfying(OutOfRangeException.class, refused -> {
                    assertThat(refused.what()).isEqualTo("dew pressure of R-410A");
                    assertThat(refused.value()).isEqualTo(4_902_000);
                    assertThat(refused.unit()).isEqualTo("Pa");
                    assertThat(refused.limit()).contains("Pa absolute").contains("344.494 K");
                });
    }

    @Test
    void aTemperatureAboveTheRangeIsRefusedWithValueUnitAndLimit() {
        assertThatThrownBy(() -> r410a.bubblePressure(Temperature.fahrenheit(165)))
                .isInstanceOfSatisfying(OutOfRangeException.class, refused -> {
                    assertThat(refused.what()).isEqualTo("bubble temperature of R-410A");
                    assertThat(refused.value()).isCloseTo(347.04, within(0.01));
                    assertThat(refused.unit()).isEqualTo("K");
                    assertThat(refused.limit()).contains("0.985 of the critical temperature, 344.494 K");
                });
    }

    @Test
    void whatLiesBelowTheRangeIsRefused() {
        assertThatThrownBy(() -> r22.bubbleTemperature(AbsolutePressure.pascals(10_000)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("bubble pressure of R-22 10000.0 Pa");
        assertThatThrownBy(() -> r22.dewPressure(Temperature.kelvin(199.9))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> r22.saturatedLiquid(Temperature.kelvin(199.9)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> r22.saturatedVapour(Temperature.kelvin(199.9)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void vapourAboveItsDewPressureIsRefused() {
        Temperature temperature = Temperature.celsius(10);
        AbsolutePressure tooHigh =
                AbsolutePressure.pascals(r410a.dewPressure(temperature).pascals() * 1.001);

        assertThatThrownBy(() -> r410a.superheatedVapour(temperature, tooHigh))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above which it condenses");
        assertThat(r410a.superheatedVapour(temperature, r410a.dewPressure(temperature))
                        .density())
                .isCloseTo(r410a.saturatedVapour(temperature).density(), within(1e-4));
    }

    @Test
    void vapourIsGivenAboveTheCriticalTemperatureUpToTheHighestPressure() {
        Temperature hot = Temperature.fahrenheit(250);

        assertThat(r410a.superheatedVapour(hot, AbsolutePressure.psia(500)).density())
                .isBetween(80.0, 120.0);
        assertThatThrownBy(() -> r410a.superheatedVapour(hot, AbsolutePressure.psia(700)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> r410a.superheatedVapour(Temperature.kelvin(500.1), AbsolutePressure.psia(100)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("200.0 to 500.0 K");
        assertThatThrownBy(() -> r410a.superheatedVapour(Temperature.kelvin(199), AbsolutePressure.psia(1)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void liquidBelowItsBubblePressureIsRefused() {
        Temperature temperature = Temperature.celsius(30);
        AbsolutePressure bubble = r407c.bubblePressure(temperature);

        assertThatThrownBy(() -> r407c.subcooledLiquid(temperature, AbsolutePressure.pascals(0.999 * bubble.pascals())))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("below which it boils");
        assertThatThrownBy(() -> r407c.subcooledLiquid(temperature, AbsolutePressure.pascals(10.1e6)))
                .isInstanceOf(OutOfRangeException.class);
        assertThat(r407c.subcooledLiquid(temperature, bubble).density())
                .isCloseTo(r407c.saturatedLiquid(temperature).density(), within(1e-3));
    }
}
