package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/**
 * What a probe shows now.
 *
 * @param value the latest; there is one while values come
 */
public record ProbeReport(Probe probe, Quality quality, Optional<ProbeValue> value) {

    /** How far a value of a probe can be relied on. */
    public enum Quality {
        /** It hardly moved for as long as it must stand: the value is offered. */
        STEADY,
        /** Values come, and move. */
        CHANGING,
        /** The connection stands, and no new value comes. */
        STALE,
        /** What comes is no number. */
        NOT_A_NUMBER,
        /** The value cannot be where the probe is. */
        IMPOSSIBLE,
        /** There is no connection. */
        LOST;

        /** Whether no value comes that could be used. */
        boolean trouble() {
            return this != STEADY && this != CHANGING;
        }

        /** Whether it is, for the technician, the trouble that was told already: no values, or useless ones. */
        boolean sameTroubleAs(Quality told) {
            return (this == STALE || this == LOST) == (told == STALE || told == LOST);
        }
    }

    /** @throws IllegalArgumentException if it is steady without a value, or in another dimension than the probe */
    public ProbeReport {
        if (quality == Quality.STEADY && value.isEmpty()) {
            throw new IllegalArgumentException("a steady probe has a value");
        }
        if (value.filter(each -> each.unit().dimension() != probe.dimension()).isPresent()) {
            throw new IllegalArgumentException(probe.channel() + " gives a " + probe.dimension());
        }
    }

    ProbeReport as(Quality other) {
        return new ProbeReport(probe, other, value);
    }

    /** The value as one of what the probe measures; empty while none comes, or for another kind of quantity. */
    public Optional<Reading> of(Quantity quantity) {
        return value.filter(each -> each.unit().dimension() == quantity.dimension())
                .map(each -> new Reading(quantity, each.value(), each.unit()));
    }
}
