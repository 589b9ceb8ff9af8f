package readback.calc.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.reading;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

class AirflowPerTonTest {

    /** California Energy Commission table RA3.3-1: 300 cfm a ton; a ton is 12,000 Btu an hour. */
    @ParameterizedTest
    @CsvSource({"1200, 400, true", "900, 300, true", "899, 299.667, false"})
    void three_hundred_is_enough(double flow, double perTon, boolean enough) {
        Readings readings = Readings.of(
                reading(Quantity.AIRFLOW, flow),
                new Reading(Quantity.CAPACITY, new BigDecimal("36000"), Unit.BTU_PER_HOUR));
        double found = AirflowPerTon.of(readings).orElseThrow();

        assertThat(found).isCloseTo(perTon, within(1e-3));
        assertThat(AirflowPerTon.enough(found)).isEqualTo(enough);
    }

    @Test
    void one_without_the_other_tells_nothing() {
        assertThat(AirflowPerTon.of(Readings.of(reading(Quantity.AIRFLOW, 900))))
                .isEmpty();
        assertThat(AirflowPerTon.of(Readings.of(reading(Quantity.CAPACITY, 3)))).isEmpty();
    }
}
