package readback.calc.diagnosis;

import java.util.List;
import readback.calc.quantity.Quantity;

/** What is compared with an expectation. */
public enum Symptom {
    EVAPORATING_TEMPERATURE(Quantity.SUCTION_PRESSURE),
    SUPERHEAT(Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE),
    /** Condensing temperature over outdoor air. */
    CONDENSING_TEMPERATURE(Quantity.LIQUID_PRESSURE, Quantity.OUTDOOR_TEMPERATURE),
    SUBCOOLING(Quantity.LIQUID_PRESSURE, Quantity.LIQUID_LINE_TEMPERATURE),
    DISCHARGE_TEMPERATURE(Quantity.DISCHARGE_LINE_TEMPERATURE, Quantity.LIQUID_PRESSURE),
    /** Air leaving less air entering the condenser. No reading of ours; whoever measures it may state it. */
    CONDENSER_AIR_RISE(),
    AIR_SPLIT(Quantity.RETURN_DRY_BULB, Quantity.RETURN_WET_BULB, Quantity.SUPPLY_DRY_BULB),
    /** Against the rated current. No rating is read; whoever knows it may state the deviation. */
    COMPRESSOR_CURRENT();

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<Quantity> quantities;

    Symptom(Quantity... quantities) {
        this.quantities = List.of(quantities);
    }

    /** The readings that it takes; empty when no reading gives it. */
    public List<Quantity> quantities() {
        return quantities;
    }
}
