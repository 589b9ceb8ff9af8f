package readback.calc.measurement;

import java.util.List;
import java.util.Optional;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Superheat and subcooling from a gauge and a pipe probe. */
public final class LineState {

    private static final double SQUARE_ROOT_OF_THREE = Math.sqrt(3);

    private LineState() {}

    /** The dew point at the suction pressure; absent without a reading or without such a point. */
    public static Optional<Saturation> evaporating(SystemUnderTest system, Readings readings) {
        return pressure(system, readings, Quantity.SUCTION_PRESSURE)
                .flatMap(p -> Saturation.at(p, system.refrigerant(), Side.DEW));
    }

    /** The bubble point at the liquid pressure; absent without a reading or without such a point. */
    public static Optional<Saturation> condensing(SystemUnderTest system, Readings readings) {
        return pressure(system, readings, Quantity.LIQUID_PRESSURE)
                .flatMap(p -> Saturation.at(p, system.refrigerant(), Side.BUBBLE));
    }

    public static Estimate superheat(Saturation evaporating, Temperature line, InstrumentAccuracy accuracy) {
        return estimate(
                line.minus(evaporating.temperature()),
                evaporating,
                accuracy.suctionGauge(),
                Instrument.SUCTION_GAUGE,
                accuracy.lineProbe(),
                Instrument.SUCTION_LINE_PROBE);
    }

    public static Estimate subcooling(Saturation condensing, Temperature line, InstrumentAccuracy accuracy) {
        return estimate(
                condensing.temperature().minus(line),
                condensing,
                accuracy.liquidGauge(),
                Instrument.LIQUID_GAUGE,
                accuracy.lineProbe(),
                Instrument.LIQUID_LINE_PROBE);
    }

    /** The standard uncertainty of an instrument that may be off by as much as its limit, either way. */
    public static TemperatureDifference standard(TemperatureDifference limit) {
        return TemperatureDifference.kelvins(limit.kelvins() / SQUARE_ROOT_OF_THREE);
    }

    private static Estimate estimate(
            TemperatureDifference value,
            Saturation saturation,
            GaugePressure gaugeLimit,
            Instrument gauge,
            TemperatureDifference probeLimit,
            Instrument probe) {
        TemperatureDifference gaugeInKelvins =
                TemperatureDifference.kelvins(Math.abs(gaugeLimit.pascals() * saturation.kelvinsPerPascal()));
        return new Estimate(
                value,
                List.of(
                        new Estimate.Contribution(gauge, standard(gaugeInKelvins)),
                        new Estimate.Contribution(probe, standard(probeLimit))));
    }

    private static Optional<AbsolutePressure> pressure(SystemUnderTest system, Readings readings, Quantity quantity) {
        return readings.gaugePressure(quantity).map(gauge -> gauge.absoluteIn(system.atmosphere()));
    }
}
