package readback.calc.procedure;

import java.time.Duration;
import readback.calc.quantity.AbsolutePressure;

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
    public static final VacuumCriterion FIELD =
            new VacuumCriterion(AbsolutePressure.microns(500), Duration.ofMinutes(10), AbsolutePressure.microns(500));

    /** The same hold with the maker's figure for the end; the pump is not isolated above it either. */
    public VacuumCriterion stayingBelow(AbsolutePressure makersFigure) {
        AbsolutePressure from = makersFigure.compareTo(pumpDownTo) < 0 ? makersFigure : pumpDownTo;
        return new VacuumCriterion(from, hold, makersFigure);
    }

    /** Whether the pump may be isolated at this vacuum. */
    public boolean deepEnough(AbsolutePressure vacuum) {
        return vacuum.compareTo(pumpDownTo) <= 0;
    }
}
