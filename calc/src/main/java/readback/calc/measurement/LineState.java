package readback.calc.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;

/** Superheat and subcooling from a gauge and a pipe probe. */
public final class LineState {

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

    /** Suction line above the dew point; absent without either reading. */
    public static Optional<Estimate> superheat(Saturation evaporating, Readings readings, InstrumentAccuracy accuracy) {
        Optional<Reading> gauge = readings.find(Quantity.SUCTION_PRESSURE);
        Optional<Reading> line = readings.find(Quantity.SUCTION_LINE_TEMPERATURE);
        if (gauge.isEmpty() || line.isEmpty()) {
            return Optional.empty();
        }
        Temperature measured = line.get().temperature();
        List<Estimate.Contribution> shares = new ArrayList<>(7);
        Shares.gauge(
                shares, Instrument.SUCTION_GAUGE, accuracy.suctionGauge(), gauge.get(), evaporating.kelvinsPerPascal());
        Shares.clamp(shares, Instrument.SUCTION_LINE_PROBE, accuracy, line.get());
        Shares.air(shares, accuracy, readings, evaporating.kelvinsPerPascal());
        return Optional.of(new Estimate(measured.minus(evaporating.temperature()), shares));
    }

    /** Liquid line below the bubble point; absent without either reading. */
    public static Optional<Estimate> subcooling(Saturation condensing, Readings readings, InstrumentAccuracy accuracy) {
        Optional<Reading> gauge = readings.find(Quantity.LIQUID_PRESSURE);
        Optional<Reading> line = readings.find(Quantity.LIQUID_LINE_TEMPERATURE);
        if (gauge.isEmpty() || line.isEmpty()) {
            return Optional.empty();
        }
        Temperature measured = line.get().temperature();
        List<Estimate.Contribution> shares = new ArrayList<>(7);
        Shares.gauge(
                shares, Instrument.LIQUID_GAUGE, accuracy.liquidGauge(), gauge.get(), condensing.kelvinsPerPascal());
        Shares.clamp(shares, Instrument.LIQUID_LINE_PROBE, accuracy, line.get());
        Shares.air(shares, accuracy, readings, condensing.kelvinsPerPascal());
        return Optional.of(new Estimate(condensing.temperature().minus(measured), shares));
    }

    private static Optional<AbsolutePressure> pressure(SystemUnderTest system, Readings readings, Quantity quantity) {
        return readings.gaugePressure(quantity).map(gauge -> gauge.absoluteIn(system.atmosphere()));
    }
}
