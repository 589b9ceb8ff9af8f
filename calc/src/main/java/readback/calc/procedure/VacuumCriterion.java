package readback.calc.procedure;

import java.time.Duration;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Unit;

/**
 * When a circuit counts as dry and tight: pump down, isolate the pump, wait. The maker's own criterion comes first.
 *
 * @param pumpDownTo the vacuum at which the pump is isolated
 * @param hold how long to wait
 * @param mustStayBelow the highest pressure allowed at the end
 */
public record VacuumCriterion(AbsolutePressure pumpDownTo, Duration hold, AbsolutePressure mustStayBelow) {

    /**
     * 500 microns, 10 minutes, not above 500 at the end. The field norm; many allow 1,000 at the end, but not with
     * polyol ester oil, which the refrigerants of today need. Common practice, no source.
     */
    public static final VacuumCriterion FIELD = microns(500, 10, 500);

    /** 300 microns, one hour, not above 500: UFGS 15182, 3.3.3. */
    public static final VacuumCriterion GUIDE_SPECIFICATION = microns(300, 60, 500);

    /** 500 microns held 20 minutes: one maker's installation instructions of 2007. */
    public static final VacuumCriterion MAKER_HOLDING_500 = microns(500, 20, 500);

    /** 250 microns, 15 minutes, below 700: another maker's installation instructions. */
    public static final VacuumCriterion MAKER_FROM_250 = microns(250, 15, 700);

    /** The same hold with the maker's figure for the end; the pump is not isolated above it either. */
    public VacuumCriterion stayingBelow(AbsolutePressure makersFigure) {
        AbsolutePressure from = makersFigure.compareTo(pumpDownTo) < 0 ? makersFigure : pumpDownTo;
        return new VacuumCriterion(from, hold, makersFigure);
    }

    /** Whether the pump may be isolated at this vacuum. */
    public boolean deepEnough(AbsolutePressure vacuum) {
        return vacuum.compareTo(pumpDownTo) <= 0;
    }

    private static VacuumCriterion microns(double pumpDownTo, long minutes, double mustStayBelow) {
        return new VacuumCriterion(
                AbsolutePressure.pascals(Unit.MICRON.toBase(pumpDownTo)),
                Duration.ofMinutes(minutes),
                AbsolutePressure.pascals(Unit.MICRON.toBase(mustStayBelow)));
    }
}
