package readback.calc.diagnosis;

import java.util.List;
import java.util.Optional;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * Outdoor air, return wet bulb and return dry bulb, as far as they were read: what was not read is as it usually is in
 * a cooling season beside what was. A linear estimate with its covariance (JCGM 100:2008, 5.2).
 *
 * @param mean °C, in this order
 * @param covariance K²
 */
@SuppressWarnings("ArrayRecordComponent") // for the numeric kernel, never changed and never compared
record AirAround(double[] mean, double[][] covariance) {

    static final int SIZE = 3;

    private static final List<Quantity> QUANTITIES =
            List.of(Quantity.OUTDOOR_TEMPERATURE, Quantity.RETURN_WET_BULB, Quantity.RETURN_DRY_BULB);

    /** 85, 65 and 77 °F, with standard deviations of 14, 5 and 4 °F; the damper house is the warmer one. Ours. */
    private static final double[] USUAL = {29.4, 18.3, 25};

    private static final double[][] USUAL_COVARIANCE = {{60, 0, 0}, {0, 7.7, 4.4}, {0, 4.4, 4.9}};

    static AirAround of(Readings readings, InstrumentAccuracy accuracy) {
        double[] mean = USUAL.clone();
        double[][] covariance = new double[SIZE][];
        for (int i = 0; i < SIZE; i++) {
            covariance[i] = USUAL_COVARIANCE[i].clone();
        }
        for (int i = 0; i < SIZE; i++) {
            Optional<Temperature> read = readings.temperature(QUANTITIES.get(i));
            if (read.isPresent()) {
                TemperatureDifference limit = i == 1 ? accuracy.wetBulbProbe() : accuracy.airProbe();
                learn(mean, covariance, i, read.get().celsius(), limit.kelvins() * limit.kelvins() / 3);
            }
        }
        return new AirAround(mean, covariance);
    }

    private static void learn(double[] mean, double[][] covariance, int i, double read, double variance) {
        double sum = covariance[i][i] + variance;
        double[] gain = new double[SIZE];
        for (int j = 0; j < SIZE; j++) {
            gain[j] = covariance[j][i] / sum;
        }
        double surprise = read - mean[i];
        double[] row = covariance[i].clone();
        for (int j = 0; j < SIZE; j++) {
            mean[j] += gain[j] * surprise;
            for (int k = 0; k < SIZE; k++) {
                covariance[j][k] -= gain[j] * row[k];
            }
        }
    }
}
