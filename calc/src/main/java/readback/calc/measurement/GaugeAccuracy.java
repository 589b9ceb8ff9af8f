package readback.calc.measurement;

import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;

/**
 * How far a pressure gauge may be off, plus or minus, as its maker states it: by so much at any reading, by a share of
 * the reading, or by both.
 *
 * @param fixed zero or more
 * @param ofReading share of what it shows, 0 to 1
 */
public record GaugeAccuracy(GaugePressure fixed, double ofReading) {

    private static final GaugePressure NONE = GaugePressure.pascals(0);

    /** @throws OutOfRangeException for a negative limit, or a share outside 0 to 1 */
    public GaugeAccuracy {
        if (fixed.pascals() < 0) {
            throw new OutOfRangeException("accuracy of a gauge", fixed.pascals(), "Pa", "0 or more");
        }
        if (!(ofReading >= 0 && ofReading <= 1)) {
            throw new OutOfRangeException("accuracy of a gauge", ofReading, "of the reading", "0 to 1");
        }
    }

    /** So much at any reading. */
    public static GaugeAccuracy within(GaugePressure fixed) {
        return new GaugeAccuracy(fixed, 0);
    }

    /** So many percent of what it shows. */
    public static GaugeAccuracy percentOfReading(double percent) {
        return new GaugeAccuracy(NONE, percent / 100);
    }

    /** The most that it may be off where it shows this. */
    public GaugePressure at(GaugePressure shown) {
        return GaugePressure.pascals(fixed.pascals() + ofReading * Math.abs(shown.pascals()));
    }
}
