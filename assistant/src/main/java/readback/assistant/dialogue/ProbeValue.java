package readback.assistant.dialogue;

import java.math.BigDecimal;
import java.time.Instant;
import readback.calc.quantity.Unit;

/**
 * A value that a probe gave, converted once.
 *
 * @param value in the unit, to a tenth
 * @param unit of the session: gauge pressures above the air of the site
 * @param raw what the instrument gave, before any conversion: number or registers, and unit
 * @param measuredAt when it gave it
 */
public record ProbeValue(BigDecimal value, Unit unit, String raw, Instant measuredAt) {}
