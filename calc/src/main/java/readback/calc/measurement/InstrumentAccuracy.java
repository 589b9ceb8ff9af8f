package readback.calc.measurement;

import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.TemperatureDifference;

/**
 * How far each instrument may be off, plus or minus, as its maker states it. A limit, not a standard deviation: with
 * nothing else known any error inside it is as likely as another, so its standard uncertainty is the limit over √3
 * (JCGM 100:2008, 4.3.7).
 *
 * @param suctionGauge zero or more
 * @param liquidGauge zero or more
 * @param lineProbe pipe clamp or strapped-on probe, zero or more
 * @param wetBulbProbe zero or more
 * @param airProbe dry-bulb probes in return, supply and outdoor air, zero or more
 */
public record InstrumentAccuracy(
        GaugePressure suctionGauge,
        GaugePressure liquidGauge,
        TemperatureDifference lineProbe,
        TemperatureDifference wetBulbProbe,
        TemperatureDifference airProbe) {

    /**
     * Gauges 3.5 psi and 7 psi: the worst that California Energy Commission RA3.2.2.2.3 (2013) admits. Probes 1.8 °F:
     * same source, from memory.
     */
    public static final InstrumentAccuracy STANDARD = new InstrumentAccuracy(
            GaugePressure.psig(3.5),
            GaugePressure.psig(7),
            TemperatureDifference.fahrenheit(1.8),
            TemperatureDifference.fahrenheit(1.8),
            TemperatureDifference.fahrenheit(1.8));

    /** @throws OutOfRangeException for a negative accuracy */
    public InstrumentAccuracy {
        refuseNegative("accuracy of the suction gauge", suctionGauge.pascals(), "Pa");
        refuseNegative("accuracy of the liquid gauge", liquidGauge.pascals(), "Pa");
        refuseNegative("accuracy of the line probe", lineProbe.kelvins(), "K");
        refuseNegative("accuracy of the wet-bulb probe", wetBulbProbe.kelvins(), "K");
        refuseNegative("accuracy of the air probe", airProbe.kelvins(), "K");
    }

    private static void refuseNegative(String what, double value, String unit) {
        if (value < 0) {
            throw new OutOfRangeException(what, value, unit, "0 or more");
        }
    }
}
