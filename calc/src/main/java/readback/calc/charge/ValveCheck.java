package readback.calc.charge;

import java.util.Optional;
import readback.calc.measurement.Band;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;

/**
 * Whether an expansion valve holds its superheat. It tells about the valve, not about the charge.
 *
 * @param superheat at the suction port, against the range
 * @param source rating plate when the maker states the superheat, else common limits
 */
public record ValveCheck(Comparison superheat, Source source) {

    /** ANSI/ACCA 5 QI-2015 (from memory): within 5 °F of the maker's superheat. */
    private static final double AROUND_PLATE = 5;

    /** Who states the range. */
    public enum Source {
        MAKER,
        /** RA3.2.2.6.2, step 9. */
        GENERAL_LIMITS
    }

    static ValveCheck of(SystemUnderTest system, Readings readings, Estimate superheat) {
        Optional<Band> makers = makersRange(readings);
        return new ValveCheck(
                Comparison.of(superheat, makers.orElse(system.limits().valveSuperheat())),
                makers.isPresent() ? Source.MAKER : Source.GENERAL_LIMITS);
    }

    /** The superheat that the valve of this system holds: as its maker states it, else the common limits. */
    static Band range(SystemUnderTest system, Readings readings) {
        return makersRange(readings).orElse(system.limits().valveSuperheat());
    }

    private static Optional<Band> makersRange(Readings readings) {
        return readings.difference(Quantity.PLATE_SUPERHEAT)
                .map(plate -> Band.fahrenheit(plate.fahrenheit() - AROUND_PLATE, plate.fahrenheit() + AROUND_PLATE));
    }
}
