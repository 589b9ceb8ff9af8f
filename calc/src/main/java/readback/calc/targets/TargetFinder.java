package readback.calc.targets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.condition.Condition;
import readback.calc.condition.FailedCondition;
import readback.calc.condition.Remedy;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Instrument;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.MakersTarget;
import readback.calc.measurement.Readings;
import readback.calc.measurement.Shares;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Finds the target that the readings give, or says what stands in the way. */
public final class TargetFinder {

    /** 8 to 14 °F fits most expansion-valve units whose plate is gone. Common practice, no source. */
    private static final Band COMMON_SUBCOOLING = Band.fahrenheit(8, 14);

    /** What the liquid has at least where nothing is known of the unit: the lower end of the same range. */
    public static final TemperatureDifference LEAST_COMMON_SUBCOOLING = COMMON_SUBCOOLING.low();

    /** Where the table of target superheat begins and ends. RA3.2, recalled. */
    public static final Reading LOWEST_WET_BULB = Reading.of(Quantity.RETURN_WET_BULB, "50");

    public static final Reading HIGHEST_WET_BULB = Reading.of(Quantity.RETURN_WET_BULB, "76");
    private static final Reading HIGHEST_OUTDOOR = Reading.of(Quantity.OUTDOOR_TEMPERATURE, "115");

    private TargetFinder() {}

    /** A target, or what is missing, or the conditions that forbid one. */
    public record Found(Optional<Target> target, Set<Quantity> missing, List<FailedCondition> failures) {

        static Found of(Target target) {
            return new Found(Optional.of(target), Set.of(), List.of());
        }

        static Found missing(Set<Quantity> missing) {
            return new Found(Optional.empty(), missing, List.of());
        }

        static Found failed(List<FailedCondition> failures) {
            return new Found(Optional.empty(), Set.of(), failures);
        }
    }

    /**
     * The target for the method, as far as the readings give one. What the maker wants in this weather comes first.
     *
     * @param condensing saturation at the liquid port, as far as it is known
     */
    public static Found find(
            ChargeMethod method,
            Optional<MakersTarget> makers,
            Readings readings,
            Optional<Temperature> condensing,
            InstrumentAccuracy accuracy) {
        if (makers.isEmpty()) {
            return withoutMaker(method, readings, accuracy);
        }
        return makers.get().fold(new MakersTarget.Cases<>() {
            @Override
            public Found cell(MakersTarget.Cell cell) {
                return Found.of(Target.exact(cell.target(), TargetSource.MAKERS_CHART));
            }

            @Override
            public Found betweenPoints(MakersTarget.BetweenPoints points) {
                return TargetFinder.betweenPoints(points, readings, accuracy);
            }

            @Override
            public Found approach(MakersTarget.Approach approach) {
                return method == ChargeMethod.SUBCOOLING
                        ? TargetFinder.approach(approach, readings, condensing, accuracy)
                        : withoutMaker(method, readings, accuracy);
            }
        });
    }

    private static Found withoutMaker(ChargeMethod method, Readings readings, InstrumentAccuracy accuracy) {
        return method == ChargeMethod.SUBCOOLING ? subcooling(readings) : superheat(readings, accuracy);
    }

    private static Found betweenPoints(
            MakersTarget.BetweenPoints points, Readings readings, InstrumentAccuracy accuracy) {
        Optional<Reading> outdoor = readings.find(Quantity.OUTDOOR_TEMPERATURE);
        if (outdoor.isEmpty()) {
            return Found.missing(EnumSet.of(Quantity.OUTDOOR_TEMPERATURE));
        }
        return points.at(outdoor.get().temperature())
                .map(value -> Found.of(Target.from(
                        value, TargetSource.MAKERS_CHART, outdoorShares(outdoor.get(), accuracy, points.slope()))))
                .orElseGet(() -> Found.failed(List.of(FailedCondition.of(Condition.OUTDOOR_BETWEEN_CHART_POINTS))));
    }

    /**
     * The subcooling at which the liquid line has the maker's approach: condensing less outdoor air less approach. The
     * liquid gauge and the air drop out again when the measured subcooling is held against it, for both count from the
     * same saturation.
     */
    private static Found approach(
            MakersTarget.Approach approach,
            Readings readings,
            Optional<Temperature> condensing,
            InstrumentAccuracy accuracy) {
        Optional<Reading> outdoor = readings.find(Quantity.OUTDOOR_TEMPERATURE);
        if (outdoor.isEmpty() || condensing.isEmpty()) {
            return Found.missing(EnumSet.of(Quantity.OUTDOOR_TEMPERATURE, Quantity.LIQUID_PRESSURE));
        }
        TemperatureDifference value =
                condensing.get().minus(outdoor.get().temperature()).minus(approach.target());
        return Found.of(new Target(
                value,
                TargetSource.MAKERS_APPROACH,
                outdoorShares(outdoor.get(), accuracy, -1),
                EnumSet.of(Instrument.LIQUID_GAUGE, Instrument.AIR_PRESSURE)));
    }

    private static List<Estimate.Contribution> outdoorShares(
            Reading outdoor, InstrumentAccuracy accuracy, double sensitivity) {
        List<Estimate.Contribution> shares = new ArrayList<>(2);
        Shares.thermometer(shares, Instrument.OUTDOOR_PROBE, accuracy.airProbe(), outdoor, sensitivity);
        return shares;
    }

    private static Found subcooling(Readings readings) {
        Optional<TemperatureDifference> plate = readings.difference(Quantity.PLATE_SUBCOOLING);
        if (plate.isPresent()) {
            return Found.of(Target.exact(plate.get(), TargetSource.RATING_PLATE));
        }
        if (readings.cannotBeKnown(Quantity.PLATE_SUBCOOLING)) {
            return Found.of(Target.exact(COMMON_SUBCOOLING.middle(), TargetSource.COMMON_PRACTICE));
        }
        return Found.missing(EnumSet.of(Quantity.PLATE_SUBCOOLING));
    }

    private static Found superheat(Readings readings, InstrumentAccuracy accuracy) {
        Optional<TemperatureDifference> plate = readings.difference(Quantity.PLATE_SUPERHEAT);
        if (plate.isPresent()) {
            return Found.of(Target.exact(plate.get(), TargetSource.RATING_PLATE));
        }
        Optional<Temperature> wetBulb = readings.temperature(Quantity.RETURN_WET_BULB);
        Optional<Temperature> outdoor = readings.temperature(Quantity.OUTDOOR_TEMPERATURE);
        if (wetBulb.isEmpty() || outdoor.isEmpty()) {
            return Found.missing(EnumSet.of(Quantity.RETURN_WET_BULB, Quantity.OUTDOOR_TEMPERATURE));
        }
        return SuperheatTable.standard().target(wetBulb.get(), outdoor.get()).fold(new SuperheatTable.Answer.Cases<>() {
            @Override
            public Found usable(SuperheatTable.Answer.Usable usable) {
                return Found.of(
                        Target.from(usable.target(), TargetSource.CHARGING_TABLE, shares(usable, readings, accuracy)));
            }

            @Override
            public Found tooLow(SuperheatTable.Answer.TooLow tooLow) {
                return Found.failed(
                        List.of(FailedCondition.of(Condition.TARGET_USABLE, Remedy.LOAD_THE_HOUSE, Remedy.WEIGH_IN)));
            }

            @Override
            public Found offTable(SuperheatTable.Answer.OffTable off) {
                return Found.failed(TargetFinder.offTable(readings, off));
            }
        });
    }

    private static List<Estimate.Contribution> shares(
            SuperheatTable.Answer.Usable usable, Readings readings, InstrumentAccuracy accuracy) {
        List<Estimate.Contribution> contributions = new ArrayList<>(4);
        readings.find(Quantity.RETURN_WET_BULB)
                .ifPresent(reading -> Shares.thermometer(
                        contributions,
                        Instrument.WET_BULB_PROBE,
                        accuracy.wetBulbProbe(),
                        reading,
                        usable.perWetBulb()));
        readings.find(Quantity.OUTDOOR_TEMPERATURE)
                .ifPresent(reading -> Shares.thermometer(
                        contributions, Instrument.OUTDOOR_PROBE, accuracy.airProbe(), reading, usable.perOutdoor()));
        return contributions;
    }

    private static List<FailedCondition> offTable(Readings readings, SuperheatTable.Answer.OffTable off) {
        List<FailedCondition> failures = new ArrayList<>(2);
        Optional<Reading> wetBulb = readings.find(Quantity.RETURN_WET_BULB);
        if (off.wetBulbOutside() && wetBulb.isPresent()) {
            boolean below = wetBulb.get().base() < LOWEST_WET_BULB.base();
            failures.add(FailedCondition.of(
                    Condition.WET_BULB_INSIDE_TABLE,
                    wetBulb.get(),
                    below ? LOWEST_WET_BULB : HIGHEST_WET_BULB,
                    below ? Remedy.LOAD_THE_HOUSE : Remedy.KEEP_RUNNING,
                    Remedy.USE_MAKERS_CHART,
                    Remedy.WEIGH_IN));
        }
        Optional<Reading> outdoor = readings.find(Quantity.OUTDOOR_TEMPERATURE);
        // Below the table the floor of the whole procedure is breached as well, and that is what is reported.
        if (off.outdoorOutside() && outdoor.isPresent() && outdoor.get().base() > HIGHEST_OUTDOOR.base()) {
            failures.add(FailedCondition.of(
                    Condition.OUTDOOR_INSIDE_TABLE,
                    outdoor.get(),
                    HIGHEST_OUTDOOR,
                    Remedy.COME_BACK_WHEN_COOLER,
                    Remedy.USE_MAKERS_CHART,
                    Remedy.WEIGH_IN));
        }
        return failures;
    }
}
