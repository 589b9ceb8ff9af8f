package readback.assistant.dialogue;

import java.time.Duration;
import java.util.Optional;
import readback.calc.charge.ChargeLevel;
import readback.calc.quantity.Mass;
import readback.calc.quantity.TemperatureDifference;

/**
 * A measurement that was acted on.
 *
 * @param deviation actual minus target superheat or subcooling
 * @param level what all readings showed to be in the unit then; absent where it was not judged by its charge
 * @param moved refrigerant added after it, negative when recovered
 * @param early what was missing of the settling time when the next round of measurements began; zero for none
 */
public record Round(TemperatureDifference deviation, Optional<ChargeLevel> level, Mass moved, Duration early) {}
