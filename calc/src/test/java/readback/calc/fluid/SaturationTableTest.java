package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

class SaturationTableTest {

    private final Refrigerant r407c = ((Lookup.Found) Catalogue.standard().find("R-407C")).refrigerant();

    @Test
    void listsBothPressuresAtTemperatures() {
        List<SaturationTable.Row> rows = new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.BAR_GAUGE, Unit.CELSIUS)
                .byTemperature(-10, 10, 10);

        assertThat(rows).hasSize(3);
        double dew = r407c.dewPressure(Temperature.celsius(0)).pascals();
        double bubble = r407c.bubblePressure(Temperature.celsius(0)).pascals();
        assertThat(rows.get(1).given()).isZero();
        assertThat(rows.get(1).dew().orElseThrow()).isCloseTo((dew - 101_325) / 1e5, within(1e-9));
        assertThat(rows.get(1).bubble().orElseThrow()).isCloseTo((bubble - 101_325) / 1e5, within(1e-9));
    }

    @Test
    void leavesOutWhatTheRefrigerantDoesNotReach() {
        SaturationTable table = new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.PSIG, Unit.FAHRENHEIT);

        assertThat(table.byTemperature(200, 200, 1).get(0).dew()).isEmpty();
        assertThat(table.byTemperature(-120, -120, 1).get(0).bubble()).isEmpty();
    }

    @Test
    void takesAbsoluteUnitsAsTheyAre() {
        SaturationTable table = new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.PSIA, Unit.FAHRENHEIT);

        double psia = table.byTemperature(40, 40, 1).get(0).dew().orElseThrow();
        assertThat(psia).isCloseTo(r407c.dewPressure(Temperature.fahrenheit(40)).psia(), within(1e-9));
    }

    @Test
    void keepsALastStepThatRoundingPushedOver() {
        SaturationTable table = new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.BAR_GAUGE, Unit.CELSIUS);

        assertThat(table.byTemperature(0, 0.3, 0.1)).hasSize(4);
    }

    @Test
    void refusesUnitsAndStepsThatMakeNoTable() {
        assertThatThrownBy(() -> new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.FOOT, Unit.CELSIUS))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.PSIG, Unit.KELVINS))
                .isInstanceOf(IllegalArgumentException.class);
        SaturationTable table = new SaturationTable(r407c, Atmosphere.SEA_LEVEL, Unit.PSIG, Unit.CELSIUS);
        assertThatThrownBy(() -> table.byTemperature(0, 10, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> table.byTemperature(10, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> table.byTemperature(Double.NaN, 10, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
