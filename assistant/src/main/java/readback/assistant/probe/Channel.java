package readback.assistant.probe;

import java.util.Optional;
import readback.assistant.dialogue.Probe;
import readback.calc.quantity.Dimension;

/**
 * One value of an instrument: where it comes from and what it means.
 *
 * @param unit of the value where the instrument does not tell it
 * @param absolute whether a pressure is counted from a vacuum, and not from the air around
 */
record Channel(Probe probe, Wire wire, Place place, Optional<RawUnit> unit, boolean absolute) {

    /** What a number of this channel was, for the record: in signs only, as in "915000 Pa(a)". */
    String raw(String number, RawUnit given) {
        boolean pressure = given.dimension() == Dimension.GAUGE_PRESSURE;
        return number + " " + given.symbol() + (pressure ? absolute ? "(a)" : "(g)" : "");
    }
}
