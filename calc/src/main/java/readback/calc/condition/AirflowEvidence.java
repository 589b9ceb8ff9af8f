package readback.calc.condition;

import java.util.Optional;
import java.util.OptionalDouble;
import readback.calc.measurement.Readings;
import readback.calc.quantity.TemperatureDifference;

/**
 * What the readings show of the airflow over the indoor coil. Worked out once for a set of readings.
 *
 * @param perTon as it was measured, in cubic feet a minute for each ton of refrigeration
 * @param splitDeviation actual minus target temperature split; a measured airflow decides, so it is absent beside one
 */
public record AirflowEvidence(OptionalDouble perTon, Optional<TemperatureDifference> splitDeviation) {

    /** What these readings show. */
    public static AirflowEvidence of(Readings readings) {
        OptionalDouble perTon = AirflowPerTon.of(readings);
        return new AirflowEvidence(
                perTon, perTon.isPresent() ? Optional.empty() : TemperatureSplit.deviation(readings));
    }

    /** Whether anything shows it. */
    public boolean shown() {
        return perTon.isPresent() || splitDeviation.isPresent();
    }
}
