package readback.calc.measurement;

import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;

/**
 * What is known before the first reading.
 *
 * @param atmosphere pressure of the air around the gauges
 * @param limits who judges
 * @param accuracy of the instruments used
 * @param makersRanges what the maker of the unit allows
 */
public record SystemUnderTest(
        Refrigerant refrigerant,
        MeteringDevice meteringDevice,
        AbsolutePressure atmosphere,
        Limits limits,
        InstrumentAccuracy accuracy,
        MakersRanges makersRanges) {

    /** An installer with ordinary instruments at sea level, and nothing stated by the maker. */
    public static SystemUnderTest of(Refrigerant refrigerant, MeteringDevice meteringDevice) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                Atmosphere.SEA_LEVEL,
                Limits.INSTALLER,
                InstrumentAccuracy.STANDARD,
                MakersRanges.NONE);
    }

    public SystemUnderTest in(AbsolutePressure airPressure) {
        return new SystemUnderTest(refrigerant, meteringDevice, airPressure, limits, accuracy, makersRanges);
    }

    public SystemUnderTest judgedBy(Limits judge) {
        return new SystemUnderTest(refrigerant, meteringDevice, atmosphere, judge, accuracy, makersRanges);
    }

    public SystemUnderTest measuredWith(InstrumentAccuracy instruments) {
        return new SystemUnderTest(refrigerant, meteringDevice, atmosphere, limits, instruments, makersRanges);
    }

    public SystemUnderTest with(MakersRanges ranges) {
        return new SystemUnderTest(refrigerant, meteringDevice, atmosphere, limits, accuracy, ranges);
    }
}
