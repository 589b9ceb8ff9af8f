package readback.assistant.dialogue;

import readback.calc.quantity.Mass;
import readback.calc.quantity.TemperatureDifference;

/**
 * A measurement that was acted on.
 *
 * @param deviation actual minus target superheat or subcooling
 * @param moved refrigerant added after it, negative when recovered
 */
public record Round(TemperatureDifference deviation, Mass moved) {}
