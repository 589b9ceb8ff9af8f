package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

class CylinderScaleTest {

    private static Reading weight(String value, Unit unit) {
        return new Reading(Quantity.CYLINDER_WEIGHT, new BigDecimal(value), unit);
    }

    /** A pound is sixteen ounces: NIST SP 811 (2008), appendix B. */
    @Test
    void whatTheCylinderLostWentIn() {
        assertThat(CylinderScale.wentIn(weight("31.5", Unit.POUND), weight("23.75", Unit.POUND)))
                .contains(new Reading(Quantity.REFRIGERANT_ADDED, new BigDecimal("7.75"), Unit.POUND));
        assertThat(CylinderScale.wentIn(weight("31.5", Unit.POUND_AND_OUNCES), weight("380", Unit.OUNCE)))
                .contains(new Reading(Quantity.REFRIGERANT_ADDED, new BigDecimal("7.75"), Unit.POUND_AND_OUNCES));
    }

    @Test
    void nothingWentInIfTheScaleDidNotFall() {
        assertThat(CylinderScale.wentIn(weight("31.5", Unit.POUND), weight("31.5", Unit.POUND)))
                .isEmpty();
        assertThat(CylinderScale.wentIn(weight("31.5", Unit.POUND), weight("32", Unit.POUND)))
                .isEmpty();
    }
}
