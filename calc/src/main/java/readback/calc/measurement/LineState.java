package readback.calc.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;

/**
 * The refrigerant at both service ports: saturation by the gauges, and how far the lines are from it by the pipe
 * probes. Worked out once for a set of readings.
 *
 * @param evaporating dew point at the suction pressure; absent without a reading or without such a point
 * @param condensing bubble point at the liquid pressure; absent likewise
 * @param superheat suction line above the dew point; absent without either reading
 * @param subcooling liquid line below the bubble point; absent without either reading
 */
public record LineState(
        Optional<Saturation> evaporating,
        Optional<Saturation> condensing,
        Optional<Estimate> superheat,
        Optional<Estimate> subcooling) {

    /** Where the refrigerant is not known. */
    public static final LineState UNKNOWN =
            new LineState(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** What the readings of the system give. */
    public static LineState of(SystemUnderTest system, Readings readings) {
        return of(system.refrigerant(), system.atmosphere(), readings, system.accuracy());
    }

    /**
     * What the readings give.
     *
     * @param readings each of them possible
     */
    public static LineState of(
            Refrigerant refrigerant, AbsolutePressure atmosphere, Readings readings, InstrumentAccuracy accuracy) {
        Optional<Reading> suction = readings.find(Quantity.SUCTION_PRESSURE);
        Optional<Reading> liquid = readings.find(Quantity.LIQUID_PRESSURE);
        Optional<Saturation> evaporating = saturation(suction, refrigerant, Side.DEW, atmosphere);
        Optional<Saturation> condensing = saturation(liquid, refrigerant, Side.BUBBLE, atmosphere);
        return new LineState(
                evaporating,
                condensing,
                superheat(suction, evaporating, readings, accuracy),
                subcooling(liquid, condensing, readings, accuracy));
    }

    /** The same without the superheat and the subcooling that rest on one of these. */
    public LineState without(Set<Quantity> doubted) {
        if (doubted.isEmpty()) {
            return this;
        }
        boolean low =
                doubted.contains(Quantity.SUCTION_PRESSURE) || doubted.contains(Quantity.SUCTION_LINE_TEMPERATURE);
        boolean high = doubted.contains(Quantity.LIQUID_PRESSURE) || doubted.contains(Quantity.LIQUID_LINE_TEMPERATURE);
        return new LineState(
                evaporating, condensing, low ? Optional.empty() : superheat, high ? Optional.empty() : subcooling);
    }

    private static Optional<Saturation> saturation(
            Optional<Reading> gauge, Refrigerant refrigerant, Side side, AbsolutePressure atmosphere) {
        return gauge.isEmpty()
                ? Optional.empty()
                : Saturation.at(gauge.get().gaugePressure().absoluteIn(atmosphere), refrigerant, side);
    }

    private static Optional<Estimate> superheat(
            Optional<Reading> gauge, Optional<Saturation> saturation, Readings readings, InstrumentAccuracy accuracy) {
        Optional<Reading> line = readings.find(Quantity.SUCTION_LINE_TEMPERATURE);
        if (gauge.isEmpty() || saturation.isEmpty() || line.isEmpty()) {
            return Optional.empty();
        }
        Saturation dew = saturation.get();
        TemperatureDifference value = line.get().temperature().minus(dew.temperature());
        List<Estimate.Contribution> shares = new ArrayList<>(7);
        Shares.gauge(shares, Instrument.SUCTION_GAUGE, accuracy.suctionGauge(), gauge.get(), dew.kelvinsPerPascal());
        Shares.clamp(shares, Instrument.SUCTION_LINE_PROBE, accuracy, line.get());
        Shares.air(shares, accuracy, readings, dew.kelvinsPerPascal());
        return Optional.of(new Estimate(value, shares));
    }

    private static Optional<Estimate> subcooling(
            Optional<Reading> gauge, Optional<Saturation> saturation, Readings readings, InstrumentAccuracy accuracy) {
        Optional<Reading> line = readings.find(Quantity.LIQUID_LINE_TEMPERATURE);
        if (gauge.isEmpty() || saturation.isEmpty() || line.isEmpty()) {
            return Optional.empty();
        }
        Saturation bubble = saturation.get();
        TemperatureDifference value = bubble.temperature().minus(line.get().temperature());
        List<Estimate.Contribution> shares = new ArrayList<>(7);
        Shares.gauge(shares, Instrument.LIQUID_GAUGE, accuracy.liquidGauge(), gauge.get(), bubble.kelvinsPerPascal());
        Shares.clamp(shares, Instrument.LIQUID_LINE_PROBE, accuracy, line.get());
        Shares.air(shares, accuracy, readings, bubble.kelvinsPerPascal());
        return Optional.of(new Estimate(value, shares));
    }
}
