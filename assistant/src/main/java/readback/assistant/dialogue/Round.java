package readback.assistant.dialogue;

import java.time.Duration;
import readback.calc.quantity.Mass;
import readback.calc.quantity.TemperatureDifference;

/**
 * A measurement that was acted on.
 *
 * @param deviation actual minus target superheat or subcooling
 * @param moved refrigerant added after it, negative when recovered
 * @param early what was missing of the settling time when the next round of measurements began; zero for none
 */
public record Round(TemperatureDifference deviation, Mass moved, Duration early) {}
