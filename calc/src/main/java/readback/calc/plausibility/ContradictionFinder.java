package readback.calc.plausibility;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.LineState;
import readback.calc.measurement.Readings;
import readback.calc.measurement.Saturation;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Finds readings that cannot all be true. */
public final class ContradictionFinder {

    /** Liquid may read a little below the outdoor air that cooled it, no more. Common practice, no source. */
    private static final TemperatureDifference LIQUID_BELOW_OUTDOOR = TemperatureDifference.fahrenheit(3);

    private static final TemperatureDifference NOTHING = TemperatureDifference.kelvins(0);

    private ContradictionFinder() {}

    /** Readings that no instrument can show in this air, each by itself. */
    public static List<Contradiction> impossible(Readings readings, AbsolutePressure atmosphere) {
        List<Contradiction> found = new ArrayList<>(0);
        for (Reading reading : readings.asMap().values()) {
            if (!possible(reading, atmosphere)) {
                found.add(of(Contradiction.Kind.IMPOSSIBLE_READING, Optional.empty(), reading.quantity()));
            }
        }
        return found;
    }

    /** These readings less those that no instrument can show in this air. */
    public static Readings possible(Readings readings, AbsolutePressure atmosphere) {
        return readings.without(involved(impossible(readings, atmosphere)));
    }

    /** Whether physics admits the value at all. */
    public static boolean possible(Reading reading, AbsolutePressure atmosphere) {
        double base = reading.base();
        return Double.isFinite(base)
                && switch (reading.quantity().dimension()) {
                    case GAUGE_PRESSURE -> base + atmosphere.pascals() > 0;
                    case ABSOLUTE_PRESSURE, TEMPERATURE -> base > 0;
                    case TEMPERATURE_DIFFERENCE -> true;
                    case LENGTH -> base >= 0 || reading.quantity() == Quantity.ALTITUDE;
                    default -> base >= 0;
                };
    }

    /** Disagreements among readings that are possible one by one. */
    public static List<Contradiction> among(Readings readings, LineState lines) {
        List<Contradiction> found = new ArrayList<>(0);
        if (readings.has(Quantity.SUCTION_PRESSURE) && lines.evaporating().isEmpty()) {
            found.add(of(Contradiction.Kind.PRESSURE_BEYOND_SATURATION, Optional.empty(), Quantity.SUCTION_PRESSURE));
        }
        if (readings.has(Quantity.LIQUID_PRESSURE) && lines.condensing().isEmpty()) {
            found.add(of(Contradiction.Kind.PRESSURE_BEYOND_SATURATION, Optional.empty(), Quantity.LIQUID_PRESSURE));
        }
        pressures(readings, found);
        lowSide(readings, lines, found);
        highSide(readings, lines, found);
        air(readings, found);
        return found;
    }

    private static void pressures(Readings readings, List<Contradiction> found) {
        Optional<Reading> suction = readings.find(Quantity.SUCTION_PRESSURE);
        Optional<Reading> liquid = readings.find(Quantity.LIQUID_PRESSURE);
        if (suction.isPresent()
                && liquid.isPresent()
                && liquid.get().base() < suction.get().base()) {
            found.add(of(
                    Contradiction.Kind.LIQUID_PRESSURE_BELOW_SUCTION,
                    Optional.empty(),
                    Quantity.LIQUID_PRESSURE,
                    Quantity.SUCTION_PRESSURE));
        }
    }

    private static void lowSide(Readings readings, LineState lines, List<Contradiction> found) {
        lines.superheat()
                .flatMap(ContradictionFinder::beyondUncertainty)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.SUCTION_LINE_COLDER_THAN_EVAPORATING,
                        Optional.of(by),
                        Quantity.SUCTION_PRESSURE,
                        Quantity.SUCTION_LINE_TEMPERATURE)));
        above(lines.evaporating().map(Saturation::temperature), readings.temperature(Quantity.RETURN_DRY_BULB), NOTHING)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.EVAPORATING_ABOVE_RETURN_AIR,
                        Optional.of(by),
                        Quantity.SUCTION_PRESSURE,
                        Quantity.RETURN_DRY_BULB)));
    }

    private static void highSide(Readings readings, LineState lines, List<Contradiction> found) {
        Optional<Temperature> line = readings.temperature(Quantity.LIQUID_LINE_TEMPERATURE);
        Optional<Temperature> outdoor = readings.temperature(Quantity.OUTDOOR_TEMPERATURE);
        lines.subcooling()
                .flatMap(ContradictionFinder::beyondUncertainty)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.LIQUID_LINE_WARMER_THAN_CONDENSING,
                        Optional.of(by),
                        Quantity.LIQUID_PRESSURE,
                        Quantity.LIQUID_LINE_TEMPERATURE)));
        above(outdoor, lines.condensing().map(Saturation::temperature), NOTHING)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.CONDENSING_BELOW_OUTDOOR,
                        Optional.of(by),
                        Quantity.LIQUID_PRESSURE,
                        Quantity.OUTDOOR_TEMPERATURE)));
        above(outdoor, line, LIQUID_BELOW_OUTDOOR)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.LIQUID_LINE_COLDER_THAN_OUTDOOR,
                        Optional.of(by),
                        Quantity.LIQUID_LINE_TEMPERATURE,
                        Quantity.OUTDOOR_TEMPERATURE)));
    }

    private static void air(Readings readings, List<Contradiction> found) {
        Optional<Temperature> dryBulb = readings.temperature(Quantity.RETURN_DRY_BULB);
        above(readings.temperature(Quantity.RETURN_WET_BULB), dryBulb, NOTHING)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.WET_BULB_ABOVE_DRY_BULB,
                        Optional.of(by),
                        Quantity.RETURN_WET_BULB,
                        Quantity.RETURN_DRY_BULB)));
        above(readings.temperature(Quantity.SUPPLY_DRY_BULB), dryBulb, NOTHING)
                .ifPresent(by -> found.add(of(
                        Contradiction.Kind.SUPPLY_WARMER_THAN_RETURN,
                        Optional.of(by),
                        Quantity.SUPPLY_DRY_BULB,
                        Quantity.RETURN_DRY_BULB)));
    }

    /** The quantities that no computation may use. */
    public static Set<Quantity> involved(List<Contradiction> contradictions) {
        if (contradictions.isEmpty()) {
            return Set.of();
        }
        Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);
        for (Contradiction contradiction : contradictions) {
            quantities.addAll(contradiction.between());
        }
        return quantities;
    }

    /** By how much the value is negative, if its expanded uncertainty does not explain it. */
    private static Optional<TemperatureDifference> beyondUncertainty(Estimate estimate) {
        double value = estimate.value().kelvins();
        if (value >= 0) {
            return Optional.empty();
        }
        double highest = value + estimate.expandedUncertainty().kelvins();
        return highest < 0 ? Optional.of(TemperatureDifference.kelvins(-highest)) : Optional.empty();
    }

    private static Optional<TemperatureDifference> above(
            Optional<Temperature> first, Optional<Temperature> second, TemperatureDifference allowed) {
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        TemperatureDifference by = first.get().minus(second.get()).minus(allowed);
        // 1e-9 K: what unit conversion may leave between two equal readings
        return by.kelvins() > 1e-9 ? Optional.of(by) : Optional.empty();
    }

    private static Contradiction of(Contradiction.Kind kind, Optional<TemperatureDifference> by, Quantity... between) {
        return new Contradiction(kind, Arrays.asList(between), by);
    }
}
