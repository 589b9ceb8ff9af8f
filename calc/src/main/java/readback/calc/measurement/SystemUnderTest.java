package readback.calc.measurement;

import java.util.Optional;
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
 * @param makersTarget what the maker wants in this weather; empty where nothing but a plate was read
 * @param condenserRestricted whether a restrictor on the condenser holds the pressures of a warm day: the winter set-up
 * @param efficiency of the equipment, or what its age tells of it; empty where nobody said
 */
public record SystemUnderTest(
        Refrigerant refrigerant,
        MeteringDevice meteringDevice,
        AbsolutePressure atmosphere,
        Limits limits,
        InstrumentAccuracy accuracy,
        MakersRanges makersRanges,
        Optional<MakersTarget> makersTarget,
        boolean condenserRestricted,
        Optional<Efficiency> efficiency) {

    /** An installer with ordinary instruments at sea level, and nothing stated by the maker. */
    public static SystemUnderTest of(Refrigerant refrigerant, MeteringDevice meteringDevice) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                Atmosphere.SEA_LEVEL,
                Limits.INSTALLER,
                InstrumentAccuracy.STANDARD,
                MakersRanges.NONE,
                Optional.empty(),
                false,
                Optional.empty());
    }

    public SystemUnderTest in(AbsolutePressure airPressure) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                airPressure,
                limits,
                accuracy,
                makersRanges,
                makersTarget,
                condenserRestricted,
                efficiency);
    }

    public SystemUnderTest judgedBy(Limits judge) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                atmosphere,
                judge,
                accuracy,
                makersRanges,
                makersTarget,
                condenserRestricted,
                efficiency);
    }

    public SystemUnderTest measuredWith(InstrumentAccuracy instruments) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                atmosphere,
                limits,
                instruments,
                makersRanges,
                makersTarget,
                condenserRestricted,
                efficiency);
    }

    public SystemUnderTest with(MakersRanges ranges) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                atmosphere,
                limits,
                accuracy,
                ranges,
                makersTarget,
                condenserRestricted,
                efficiency);
    }

    public SystemUnderTest aimedAt(Optional<MakersTarget> target) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                atmosphere,
                limits,
                accuracy,
                makersRanges,
                target,
                condenserRestricted,
                efficiency);
    }

    public SystemUnderTest ofEfficiency(Optional<Efficiency> told) {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                atmosphere,
                limits,
                accuracy,
                makersRanges,
                makersTarget,
                condenserRestricted,
                told);
    }

    /**
     * The same with a restrictor on the condenser. What the maker wants in the weather outdoors does not hold with it.
     */
    public SystemUnderTest withCondenserRestricted() {
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                atmosphere,
                limits,
                accuracy,
                makersRanges,
                makersTarget.filter(MakersTarget.Cell.class::isInstance),
                true,
                efficiency);
    }
}
