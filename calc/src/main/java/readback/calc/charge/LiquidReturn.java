package readback.calc.charge;

import java.util.List;
import java.util.Optional;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.Situation;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.LineState;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.plausibility.ContradictionFinder;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;

/**
 * Watches the compressor and the pressures of a running system. It takes the readings as they are, also those that
 * contradict each other: a line colder than saturation may be a slip, or liquid on its way.
 */
public final class LiquidReturn {

    private static final TemperatureDifference NOTHING = TemperatureDifference.kelvins(0);

    /** From one reading to the coldest that a hunting valve may take the coil to. Ours; decision 0003. */
    private static final TemperatureDifference BELOW_ONE_READING = TemperatureDifference.fahrenheit(-8);

    private LiquidReturn() {}

    /**
     * The cautions that the readings of a running system call for, whatever else is known about it.
     *
     * @param refrigerant absent where it is not known yet; then only what needs no saturation is looked at
     * @param accuracy liquid is warned of as soon as the true superheat may well be too small: while the measured one
     *     lies less than a standard uncertainty above {@link CautionFinder#LEAST_SAFE_SUPERHEAT}
     */
    public static List<Caution> cautions(
            Optional<Refrigerant> refrigerant,
            AbsolutePressure atmosphere,
            Readings readings,
            InstrumentAccuracy accuracy) {
        Readings possible = ContradictionFinder.possible(readings, atmosphere);
        LineState lines = refrigerant
                .map(known -> LineState.of(known, atmosphere, possible, accuracy))
                .orElse(LineState.UNKNOWN);
        return cautions(refrigerant, atmosphere, possible, lines, false);
    }

    /**
     * The same where the lines were worked out already.
     *
     * @param possible each of them possible, contradictory or not
     * @param lines what those readings give
     * @param suctionSwings whether the suction pressure was seen to swing
     */
    static List<Caution> cautions(
            Optional<Refrigerant> refrigerant,
            AbsolutePressure atmosphere,
            Readings possible,
            LineState lines,
            boolean suctionSwings) {
        return CautionFinder.in(new Situation.Running(
                refrigerant,
                refrigerant.flatMap(known -> superheat(known, atmosphere, possible, lines)),
                leastSure(lines),
                suctionSwings
                        ? refrigerant.flatMap(known -> lowest(known, lines)).or(() -> suction(possible, atmosphere))
                        : suction(possible, atmosphere),
                pressure(possible, Quantity.LIQUID_PRESSURE, atmosphere),
                possible.temperature(Quantity.DISCHARGE_LINE_TEMPERATURE)));
    }

    /** What a swinging suction pressure may fall to, where the reading was its highest. */
    private static Optional<AbsolutePressure> lowest(Refrigerant refrigerant, LineState lines) {
        return lines.evaporating()
                .map(evaporating -> evaporating.temperature().plus(BELOW_ONE_READING))
                .filter(trough -> trough.compareTo(refrigerant.lowestTemperature()) > 0)
                .map(trough -> refrigerant.saturationPressure(Side.DEW, trough));
    }

    private static Optional<AbsolutePressure> suction(Readings possible, AbsolutePressure atmosphere) {
        return pressure(possible, Quantity.SUCTION_PRESSURE, atmosphere);
    }

    /** Whether liquid may reach the compressor: the superheat as measured is less than the device has to keep. */
    static boolean suspected(SystemUnderTest system, Readings possible, LineState lines) {
        Optional<TemperatureDifference> measured =
                superheat(system.refrigerant(), system.atmosphere(), possible, lines);
        return measured.isPresent() && measured.get().compareTo(leastSuperheat(system, possible)) < 0;
    }

    /** What the suction line must keep: 5 °F behind a fixed orifice, the lower limit of the range of a valve. */
    static TemperatureDifference leastSuperheat(SystemUnderTest system, Readings readings) {
        if (system.meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT) {
            return CautionFinder.LEAST_SAFE_SUPERHEAT;
        }
        TemperatureDifference low = ValveCheck.range(system, readings).low();
        return low.compareTo(NOTHING) < 0 ? NOTHING : low;
    }

    /** The smallest measured superheat behind which the true one is likely safe. */
    private static TemperatureDifference leastSure(LineState lines) {
        TemperatureDifference least = CautionFinder.LEAST_SAFE_SUPERHEAT;
        Optional<Estimate> superheat = lines.superheat();
        return superheat.isEmpty()
                ? least
                : TemperatureDifference.kelvins(
                        least.kelvins() + superheat.get().standardUncertainty().kelvins());
    }

    /** The best estimate, to a tenth of a Fahrenheit degree; never more than it is where the dew point has no value. */
    private static Optional<TemperatureDifference> superheat(
            Refrigerant refrigerant, AbsolutePressure atmosphere, Readings readings, LineState lines) {
        if (lines.evaporating().isPresent()) {
            return lines.superheat().map(superheat -> Comparison.tenth(superheat.value()));
        }
        boolean beyond = pressure(readings, Quantity.SUCTION_PRESSURE, atmosphere)
                .filter(suction -> suction.compareTo(refrigerant.highestPressure(Side.DEW)) > 0)
                .isPresent();
        // the dew point lies still higher, so this is the most that it can be
        return beyond
                ? readings.temperature(Quantity.SUCTION_LINE_TEMPERATURE)
                        .map(line -> line.minus(refrigerant.highestTemperature()))
                : Optional.empty();
    }

    private static Optional<AbsolutePressure> pressure(
            Readings readings, Quantity quantity, AbsolutePressure atmosphere) {
        return readings.gaugePressure(quantity).map(gauge -> gauge.absoluteIn(atmosphere));
    }
}
