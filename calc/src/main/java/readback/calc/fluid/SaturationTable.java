package readback.calc.fluid;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/**
 * Pressure-temperature tables as a gauge reads them at the local air pressure, in even steps of the reader's own unit.
 * The values are bare numbers in the units that were asked for; layout is up to whoever prints them.
 */
public final class SaturationTable {

    private final Refrigerant refrigerant;
    private final AbsolutePressure atmosphere;
    private final Unit pressureUnit;
    private final Unit temperatureUnit;

    /**
     * @param atmosphere the local air pressure
     * @param pressureUnit gauge or absolute
     */
    public SaturationTable(
            Refrigerant refrigerant, AbsolutePressure atmosphere, Unit pressureUnit, Unit temperatureUnit) {
        boolean pressure = pressureUnit.dimension() == Dimension.GAUGE_PRESSURE
                || pressureUnit.dimension() == Dimension.ABSOLUTE_PRESSURE;
        if (!pressure || temperatureUnit.dimension() != Dimension.TEMPERATURE) {
            throw new IllegalArgumentException(
                    "not a pressure and a temperature unit: " + pressureUnit + ", " + temperatureUnit);
        }
        this.refrigerant = refrigerant;
        this.atmosphere = atmosphere;
        this.pressureUnit = pressureUnit;
        this.temperatureUnit = temperatureUnit;
    }

    /**
     * One line of a table. Whatever lies outside the refrigerant's range is empty.
     *
     * @param given the pressure or temperature that the line is for
     * @param bubble the temperature or pressure at which subcooled liquid begins to boil
     * @param dew the temperature or pressure at which superheated vapour begins to condense
     */
    public record Row(double given, OptionalDouble bubble, OptionalDouble dew) {}

    /**
     * Bubble and dew pressures at the temperatures first, first + step, ... up to last.
     *
     * @param step above zero
     */
    public List<Row> byTemperature(double first, double last, double step) {
        return given(first, last, step)
                .mapToObj(given -> new Row(given, pressureAt(Side.BUBBLE, given), pressureAt(Side.DEW, given)))
                .toList();
    }

    private static DoubleStream given(double first, double last, double step) {
        if (!(step > 0 && last >= first && Double.isFinite(last - first))) {
            throw new IllegalArgumentException("no steps of " + step + " from " + first + " to " + last);
        }
        // A step that ends a rounding error beyond the last value still belongs to the table.
        int count = (int) Math.floor((last - first) / step + 1e-9) + 1;
        return IntStream.range(0, count).mapToDouble(i -> first + i * step);
    }

    private OptionalDouble pressureAt(Side side, double given) {
        double kelvin = temperatureUnit.toBase(given);
        if (kelvin < refrigerant.lowestTemperature().kelvin()
                || kelvin > refrigerant.highestTemperature().kelvin()) {
            return OptionalDouble.empty();
        }
        AbsolutePressure pressure = refrigerant.saturationPressure(side, Temperature.kelvin(kelvin));
        if (pressureUnit.dimension() == Dimension.ABSOLUTE_PRESSURE) {
            return OptionalDouble.of(pressureUnit.fromBase(pressure.pascals()));
        }
        GaugePressure gauge = pressure.gaugeIn(atmosphere);
        return OptionalDouble.of(pressureUnit.fromBase(gauge.pascals()));
    }
}
