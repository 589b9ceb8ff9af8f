package readback.calc.plausibility;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.LineState;
import readback.calc.measurement.Readings;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

/**
 * Grades a stated value before it is taken. The ranges and their standing: beside them in plausible-bands.txt. The
 * consistency with earlier readings matters more than any range.
 */
public final class Plausibility {

    private Plausibility() {}

    /**
     * How believable the reading is for this refrigerant beside the readings taken so far.
     *
     * @param refrigerant absent while not known; wide ranges apply then
     * @param soFar may hold an earlier reading of the same quantity, which does not count
     */
    public static Grade grade(Reading reading, Optional<Refrigerant> refrigerant, Readings soFar) {
        AbsolutePressure atmosphere = atmosphere(soFar);
        if (!ContradictionFinder.possible(reading, atmosphere)) {
            return new Grade.Impossible(new Grade.Refusal.Unphysical(reading.quantity()));
        }
        Optional<PlausibleBand> found = PlausibleBand.of(reading.quantity(), refrigerant, capacity(soFar), atmosphere);
        Optional<Grade> outside = found.flatMap(band -> within(reading, band));
        if (outside.filter(Grade.Impossible.class::isInstance).isPresent()) {
            return outside.get();
        }
        Optional<Contradiction> contradiction = contradiction(reading, refrigerant, soFar, atmosphere);
        if (contradiction.isPresent()) {
            return new Grade.Unusual(new Grade.Doubt.Contradicts(contradiction.get()));
        }
        return outside.orElse(new Grade.Typical());
    }

    /**
     * How believable the reading is where a heat pump heats, or on a day on which it would. Readings of cooling tell
     * nothing about it.
     *
     * @param soFar tells only how high the site lies
     */
    public static Grade gradeHeating(Reading reading, Optional<Refrigerant> refrigerant, Readings soFar) {
        AbsolutePressure atmosphere = atmosphere(soFar);
        Optional<PlausibleBand> band = PlausibleBand.heating(reading.quantity(), refrigerant, atmosphere);
        return band.isPresent() && ContradictionFinder.possible(reading, atmosphere)
                ? within(reading, band.get()).orElse(new Grade.Typical())
                : grade(reading, refrigerant, Readings.none());
    }

    /** What speaks against a value that lies outside a band; empty inside. */
    private static Optional<Grade> within(Reading reading, PlausibleBand band) {
        double value = reading.base();
        if (value < band.refuseBelow() || value > band.refuseAbove()) {
            return Optional.of(new Grade.Impossible(new Grade.Refusal.OutsidePossible(
                    reading.quantity(), value > band.refuseAbove(), band.possible())));
        }
        return value < band.askBelow() || value > band.askAbove()
                ? Optional.of(new Grade.Unusual(
                        new Grade.Doubt.OutsideUsual(reading.quantity(), value > band.askAbove(), band.usual())))
                : Optional.empty();
    }

    /**
     * Every value that some system could have, whatever its refrigerant, at sea level: outside it {@link #grade}
     * refuses for each. In the quantity's own unit of plausible-bands.txt.
     */
    public static Grade.Span possible(Quantity quantity) {
        return widest(PlausibleBand.all(quantity), PlausibleBand::possible);
    }

    /**
     * What is usually stated of a quantity, whatever the system and the season; hearing doubts a value outside it
     * before anything is known of the system. In the quantity's own unit of plausible-bands.txt.
     */
    public static Grade.Span usual(Quantity quantity) {
        return PlausibleBand.stated(quantity)
                .map(PlausibleBand::usual)
                .orElseGet(() -> widest(PlausibleBand.all(quantity), PlausibleBand::usual));
    }

    /** From the lowest limit of all bands to the highest, in the unit of the first. */
    private static Grade.Span widest(List<PlausibleBand> bands, Function<PlausibleBand, Grade.Span> limits) {
        List<Grade.Span> spans = bands.stream().map(limits).toList();
        double low = spans.stream()
                .mapToDouble(span -> span.unit().toBase(span.low()))
                .min()
                .orElseThrow();
        double high = spans.stream()
                .mapToDouble(span -> span.unit().toBase(span.high()))
                .max()
                .orElseThrow();
        Unit unit = spans.get(0).unit();
        return new Grade.Span(unit.fromBase(low), unit.fromBase(high), unit);
    }

    private static Optional<Contradiction> contradiction(
            Reading reading, Optional<Refrigerant> refrigerant, Readings soFar, AbsolutePressure atmosphere) {
        Readings possible = ContradictionFinder.possible(soFar.with(reading), atmosphere);
        LineState lines = refrigerant
                .map(known -> LineState.of(known, atmosphere, possible, InstrumentAccuracy.STANDARD))
                .orElse(LineState.UNKNOWN);
        return ContradictionFinder.among(possible, lines).stream()
                .filter(contradiction -> contradiction.between().contains(reading.quantity()))
                // without a refrigerant there is no saturation to be beyond
                .filter(contradiction -> refrigerant.isPresent()
                        || contradiction.kind() != Contradiction.Kind.PRESSURE_BEYOND_SATURATION)
                .findFirst();
    }

    private static AbsolutePressure atmosphere(Readings soFar) {
        return soFar.find(Quantity.ALTITUDE)
                .filter(altitude ->
                        altitude.base() >= Atmosphere.LOWEST_METRES && altitude.base() <= Atmosphere.HIGHEST_METRES)
                .map(altitude -> Atmosphere.atAltitude(altitude.base()))
                .orElse(Atmosphere.SEA_LEVEL);
    }

    private static Optional<Double> capacity(Readings soFar) {
        return soFar.find(Quantity.CAPACITY)
                .map(capacity -> capacity.in(Unit.TON_OF_REFRIGERATION))
                .filter(tons -> tons > 0);
    }
}
