package readback.calc.measurement;

import java.util.Optional;
import java.util.function.Consumer;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;

/**
 * What is known before the first reading.
 *
 * @param atmosphere pressure of the air around the gauges
 * @param limits who judges
 * @param accuracy of the instruments used
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
                Optional.empty(),
                false,
                Optional.empty());
    }

    public SystemUnderTest in(AbsolutePressure airPressure) {
        return changed(parts -> parts.atmosphere = airPressure);
    }

    public SystemUnderTest judgedBy(Limits judge) {
        return changed(parts -> parts.limits = judge);
    }

    public SystemUnderTest measuredWith(InstrumentAccuracy instruments) {
        return changed(parts -> parts.accuracy = instruments);
    }

    public SystemUnderTest aimedAt(Optional<MakersTarget> target) {
        return changed(parts -> parts.makersTarget = target);
    }

    public SystemUnderTest ofEfficiency(Optional<Efficiency> told) {
        return changed(parts -> parts.efficiency = told);
    }

    /**
     * The same with a restrictor on the condenser. What the maker wants in the weather outdoors does not hold with it.
     */
    public SystemUnderTest withCondenserRestricted() {
        return changed(parts -> {
            parts.makersTarget = makersTarget.filter(MakersTarget.Cell.class::isInstance);
            parts.condenserRestricted = true;
        });
    }

    private SystemUnderTest changed(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new SystemUnderTest(
                refrigerant,
                meteringDevice,
                parts.atmosphere,
                parts.limits,
                parts.accuracy,
                parts.makersTarget,
                parts.condenserRestricted,
                parts.efficiency);
    }

    /** What may be another of the same refrigerant and device, while it is being changed. */
    private static final class Parts {

        private AbsolutePressure atmosphere;
        private Limits limits;
        private InstrumentAccuracy accuracy;
        private Optional<MakersTarget> makersTarget;
        private boolean condenserRestricted;
        private Optional<Efficiency> efficiency;

        Parts(SystemUnderTest before) {
            atmosphere = before.atmosphere;
            limits = before.limits;
            accuracy = before.accuracy;
            makersTarget = before.makersTarget;
            condenserRestricted = before.condenserRestricted;
            efficiency = before.efficiency;
        }
    }
}
