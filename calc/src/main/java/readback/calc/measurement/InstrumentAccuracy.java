package readback.calc.measurement;

import java.util.Optional;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

/**
 * How far each instrument may be off, plus or minus. Limits, not standard deviations: with nothing else known any error
 * inside them is as likely as another, so the standard uncertainty is the limit over √3 (JCGM 100:2008, 4.3.7).
 *
 * @param suctionGauge as its maker states it
 * @param liquidGauge as its maker states it
 * @param lineProbe pipe clamp or strapped-on probe by itself, zero or more
 * @param lineContact how far the probe is from the temperature of what flows in the pipe, zero or more
 * @param wetBulbProbe zero or more
 * @param airProbe dry-bulb probes in return, supply and outdoor air, zero or more
 * @param airPressure how far the weather takes the air pressure from that of the altitude, zero or more
 */
public record InstrumentAccuracy(
        GaugeAccuracy suctionGauge,
        GaugeAccuracy liquidGauge,
        TemperatureDifference lineProbe,
        TemperatureDifference lineContact,
        TemperatureDifference wetBulbProbe,
        TemperatureDifference airProbe,
        GaugePressure airPressure) {

    /**
     * What ordinary instruments are good for.
     *
     * <ul>
     *   <li>Gauges 3.5 psi and 7 psi: the worst that California Energy Commission RA3.2.2.2.3 (2013) admits.
     *   <li>Probes 1.8 °F, dry and wet: the same source, from memory.
     *   <li>Contact of a clamp on clean pipe, wrapped: 1 °F. Ours; bare against warm air it is several times as much.
     *   <li>Weather 2.5 kPa around the standard atmosphere, 0.36 psi: ours, after the usual span of sea-level pressure
     *       from 98 to 104 kPa (from memory).
     * </ul>
     */
    public static final InstrumentAccuracy STANDARD = new InstrumentAccuracy(
            GaugeAccuracy.within(GaugePressure.psig(3.5)),
            GaugeAccuracy.within(GaugePressure.psig(7)),
            TemperatureDifference.fahrenheit(1.8),
            TemperatureDifference.fahrenheit(1),
            TemperatureDifference.fahrenheit(1.8),
            TemperatureDifference.fahrenheit(1.8),
            GaugePressure.pascals(2_500));

    /** Every value true: what a comparison would say without any doubt. */
    public static final InstrumentAccuracy PERFECT = new InstrumentAccuracy(
            GaugeAccuracy.within(GaugePressure.pascals(0)),
            GaugeAccuracy.within(GaugePressure.pascals(0)),
            TemperatureDifference.kelvins(0),
            TemperatureDifference.kelvins(0),
            TemperatureDifference.kelvins(0),
            TemperatureDifference.kelvins(0),
            GaugePressure.pascals(0));

    /** @throws OutOfRangeException for a negative accuracy */
    public InstrumentAccuracy {
        refuseNegative("accuracy of the line probe", lineProbe.kelvins(), "K");
        refuseNegative("contact of the line probe", lineContact.kelvins(), "K");
        refuseNegative("accuracy of the wet-bulb probe", wetBulbProbe.kelvins(), "K");
        refuseNegative("accuracy of the air probe", airProbe.kelvins(), "K");
        refuseNegative("accuracy of the air pressure", airPressure.pascals(), "Pa");
    }

    /** Ordinary instruments, but where the technician stated how good the ones in use are. */
    public static InstrumentAccuracy statedIn(Readings readings) {
        InstrumentAccuracy accuracy = STANDARD;
        Optional<GaugeAccuracy> gauges = readings.gaugePressure(Quantity.GAUGE_ACCURACY)
                .map(GaugeAccuracy::within)
                .or(() -> readings.find(Quantity.GAUGE_ACCURACY_OF_READING)
                        .map(share -> GaugeAccuracy.percentOfReading(share.in(Unit.PERCENT))));
        if (gauges.isPresent()) {
            accuracy = accuracy.withGauges(gauges.get());
        }
        Optional<TemperatureDifference> clamps = readings.difference(Quantity.CLAMP_ACCURACY);
        if (clamps.isPresent()) {
            accuracy = accuracy.withLineProbes(clamps.get());
        }
        Optional<TemperatureDifference> wetBulb = readings.difference(Quantity.WET_BULB_ACCURACY);
        if (wetBulb.isPresent()) {
            accuracy = accuracy.withWetBulbProbe(wetBulb.get());
        }
        Optional<TemperatureDifference> air = readings.difference(Quantity.AIR_PROBE_ACCURACY);
        return air.isPresent() ? accuracy.withAirProbes(air.get()) : accuracy;
    }

    /** These instruments with other gauges, both of a kind. */
    public InstrumentAccuracy withGauges(GaugeAccuracy both) {
        return new InstrumentAccuracy(both, both, lineProbe, lineContact, wetBulbProbe, airProbe, airPressure);
    }

    /** These instruments with other pipe clamps; how well they touch the pipe does not change. */
    public InstrumentAccuracy withLineProbes(TemperatureDifference limit) {
        return new InstrumentAccuracy(
                suctionGauge, liquidGauge, limit, lineContact, wetBulbProbe, airProbe, airPressure);
    }

    /** These instruments with another wet-bulb probe. */
    public InstrumentAccuracy withWetBulbProbe(TemperatureDifference limit) {
        return new InstrumentAccuracy(suctionGauge, liquidGauge, lineProbe, lineContact, limit, airProbe, airPressure);
    }

    /** These instruments with other air probes. */
    public InstrumentAccuracy withAirProbes(TemperatureDifference limit) {
        return new InstrumentAccuracy(
                suctionGauge, liquidGauge, lineProbe, lineContact, wetBulbProbe, limit, airPressure);
    }

    private static void refuseNegative(String what, double value, String unit) {
        if (value < 0) {
            throw new OutOfRangeException(what, value, unit, "0 or more");
        }
    }
}
