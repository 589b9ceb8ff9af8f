package readback.calc.plausibility;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;

/**
 * Readings that cannot all be true. They are named and left out of every computation.
 *
 * @param between the quantities that disagree, or the one that cannot be
 * @param by how far beyond what physics and instruments allow, where that is a temperature difference
 */
public record Contradiction(Kind kind, List<Quantity> between, Optional<TemperatureDifference> by) {

    /** How readings can disagree. */
    public enum Kind {
        /** No instrument can show it: colder than absolute zero, a vacuum deeper than the air pressure. */
        IMPOSSIBLE_READING,
        /** No liquid and vapour coexist at this pressure: above the critical point or far too low. */
        PRESSURE_BEYOND_SATURATION,
        /** Vapour leaving the evaporator cannot be colder than the boiling liquid. */
        SUCTION_LINE_COLDER_THAN_EVAPORATING,
        /** Liquid leaving the condenser cannot be warmer than the condensing vapour. */
        LIQUID_LINE_WARMER_THAN_CONDENSING,
        WET_BULB_ABOVE_DRY_BULB,
        LIQUID_PRESSURE_BELOW_SUCTION,
        /** Cooling does not warm the air. */
        SUPPLY_WARMER_THAN_RETURN,
        /** The outdoor air cannot cool the liquid below its own temperature. */
        LIQUID_LINE_COLDER_THAN_OUTDOOR,
        /** A coil warmer than the air cannot cool it. */
        EVAPORATING_ABOVE_RETURN_AIR,
        /** A condenser colder than the air cannot give off heat. */
        CONDENSING_BELOW_OUTDOOR
    }

    public Contradiction {
        between = List.copyOf(between);
    }
}
