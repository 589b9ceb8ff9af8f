package readback.calc.diagnosis;

import java.util.List;
import readback.calc.quantity.Quantity;

/** What is compared with an expectation. A gauge stands before what its error is carried into. */
public enum Symptom {
    EVAPORATING_TEMPERATURE(Quantity.SUCTION_PRESSURE),
    SUPERHEAT(Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE),
    /** Condensing temperature over outdoor air. */
    CONDENSING_TEMPERATURE(Quantity.LIQUID_PRESSURE, Quantity.OUTDOOR_TEMPERATURE),
    SUBCOOLING(Quantity.LIQUID_PRESSURE, Quantity.LIQUID_LINE_TEMPERATURE),
    /** Discharge line over condensing temperature. */
    DISCHARGE_TEMPERATURE(Quantity.DISCHARGE_LINE_TEMPERATURE, Quantity.LIQUID_PRESSURE),
    /** Return less supply air. */
    AIR_SPLIT(Quantity.RETURN_DRY_BULB, Quantity.RETURN_WET_BULB, Quantity.SUPPLY_DRY_BULB);

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<Quantity> quantities;

    Symptom(Quantity... quantities) {
        this.quantities = List.of(quantities);
    }

    /** The readings that it takes. */
    public List<Quantity> quantities() {
        return quantities;
    }
}
