package readback.calc.measurement;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;

/**
 * The shares of uncertainty that one reading brings: how good its instrument is, and with how many digits it was said.
 */
public final class Shares {

    /** One step of the last digit, by the number of decimals. */
    private static final double[] STEPS = {1, 0.1, 0.01, 0.001};

    private Shares() {}

    /**
     * Of a reading of temperature.
     *
     * @param sensitivity kelvins of the result for each kelvin
     */
    public static void thermometer(
            List<Estimate.Contribution> shares,
            Instrument instrument,
            TemperatureDifference accuracy,
            Reading reading,
            double sensitivity) {
        add(shares, instrument, Estimate.Cause.ACCURACY, accuracy.kelvins(), sensitivity);
        add(shares, instrument, Estimate.Cause.RESOLUTION, halfStep(reading), sensitivity);
    }

    /**
     * Of a reading of pressure.
     *
     * @param sensitivity kelvins of the result for each pascal
     */
    static void gauge(
            List<Estimate.Contribution> shares,
            Instrument instrument,
            GaugeAccuracy accuracy,
            Reading reading,
            double sensitivity) {
        double limit = accuracy.at(reading.gaugePressure()).pascals();
        add(shares, instrument, Estimate.Cause.ACCURACY, limit, sensitivity);
        add(shares, instrument, Estimate.Cause.RESOLUTION, halfStep(reading), sensitivity);
    }

    /** Of the air around the gauges: the weather, and the altitude as it was said, "five thousand" to 500 feet. */
    static void air(
            List<Estimate.Contribution> shares, InstrumentAccuracy accuracy, Readings readings, double sensitivity) {
        add(
                shares,
                Instrument.AIR_PRESSURE,
                Estimate.Cause.ACCURACY,
                accuracy.airPressure().pascals(),
                sensitivity);
        readings.find(Quantity.ALTITUDE)
                .flatMap(Shares::pascalsOfAltitude)
                .ifPresent(
                        limit -> add(shares, Instrument.AIR_PRESSURE, Estimate.Cause.RESOLUTION, limit, sensitivity));
    }

    private static Optional<Double> pascalsOfAltitude(Reading altitude) {
        // zeros at the end of a height are rounding: nobody calls out the last foot
        BigDecimal step = altitude.value().stripTrailingZeros().ulp();
        double half = altitude.unit().toBase(step.doubleValue()) / 2;
        double low = altitude.base() - half;
        double high = altitude.base() + half;
        return low < Atmosphere.LOWEST_METRES || high > Atmosphere.HIGHEST_METRES
                ? Optional.empty()
                : Optional.of((Atmosphere.atAltitude(low).pascals()
                                - Atmosphere.atAltitude(high).pascals())
                        / 2);
    }

    /** Half of one step of the last digit, in the base unit. */
    private static double halfStep(Reading reading) {
        Reading one = reading.inOneUnit();
        int decimals = one.value().scale();
        double step = decimals >= 0 && decimals < STEPS.length
                ? STEPS[decimals]
                : one.value().ulp().doubleValue();
        return Math.abs(one.unit().toBase(step) - one.unit().toBase(0)) / 2;
    }

    private static void add(
            List<Estimate.Contribution> shares,
            Instrument instrument,
            Estimate.Cause cause,
            double limit,
            double sensitivity) {
        if (limit > 0) {
            shares.add(new Estimate.Contribution(instrument, cause, limit, sensitivity));
        }
    }

    /** Of a probe on a pipe, which touches it more or less well besides. */
    static void clamp(
            List<Estimate.Contribution> shares, Instrument instrument, InstrumentAccuracy accuracy, Reading reading) {
        thermometer(shares, instrument, accuracy.lineProbe(), reading, 1);
        add(shares, instrument, Estimate.Cause.CONTACT, accuracy.lineContact().kelvins(), 1);
    }
}
