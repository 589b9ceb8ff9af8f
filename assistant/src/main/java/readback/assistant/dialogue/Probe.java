package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;

/**
 * One channel of an instrument that gives values by itself.
 *
 * @param number by which it is spoken of, from 1 on
 * @param channel its name in the mapping
 * @param dimension what it gives: a temperature or a gauge pressure
 * @param measures what it measures where the mapping says so; empty where that is said in the session
 */
public record Probe(int number, String channel, Dimension dimension, Optional<Quantity> measures) {

    /** @throws IllegalArgumentException if it cannot measure what it is said to */
    public Probe {
        if (dimension != Dimension.TEMPERATURE && dimension != Dimension.GAUGE_PRESSURE) {
            throw new IllegalArgumentException("a probe gives a temperature or a gauge pressure, not a " + dimension);
        }
        if (measures.filter(quantity -> quantity.dimension() != dimension).isPresent()) {
            throw new IllegalArgumentException(
                    channel + " gives a " + dimension + " and measures no " + measures.get());
        }
    }
}
