package readback.calc.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Limits;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Checks what must hold whatever the target is. A condition about which nothing was read is not checked. */
public final class ConditionCheck {

    /** California Energy Commission RA3.2.1. */
    public static final Reading LOWEST_OUTDOOR = Reading.of(Quantity.OUTDOOR_TEMPERATURE, "55");

    /** California Energy Commission RA3.2.2, from memory. */
    public static final Reading LOWEST_RETURN = Reading.of(Quantity.RETURN_DRY_BULB, "70");

    private static final Reading SHORTEST_RUN = Reading.of(Quantity.RUN_TIME, "15");

    /** Winter set-up reaches from 37 to 71 °F, both excluded. California Energy Commission RA1.2.1, 2013. */
    public static final Reading WINTER_ABOVE = Reading.of(Quantity.OUTDOOR_TEMPERATURE, "37");

    /** The upper end of the same. */
    public static final Reading WINTER_BELOW = Reading.of(Quantity.OUTDOOR_TEMPERATURE, "71");

    private static final Temperature FREEZING = Temperature.fahrenheit(32);

    /** What unit conversion may leave between equal values, relative. */
    private static final double ROUNDING = 1e-9;

    private ConditionCheck() {}

    /** The conditions that do not hold, with what shows it. */
    public static List<FailedCondition> failing(
            SystemUnderTest system,
            Readings readings,
            AirflowEvidence airflow,
            Optional<Temperature> evaporating,
            Set<Condition> denied) {
        List<FailedCondition> failing = new ArrayList<>(2);
        if (system.condenserRestricted()) {
            winter(system, readings).ifPresent(failing::add);
        } else {
            outdoor(system, readings).ifPresent(failing::add);
        }
        Optional<Reading> run = readings.find(Quantity.RUN_TIME);
        if (run.isPresent() && below(run.get(), SHORTEST_RUN)) {
            failing.add(FailedCondition.of(Condition.RUN_LONG_ENOUGH, run.get(), SHORTEST_RUN, Remedy.KEEP_RUNNING));
        }
        Optional<Reading> air = readings.find(Quantity.RETURN_DRY_BULB);
        if (air.isPresent() && below(air.get(), LOWEST_RETURN)) {
            failing.add(FailedCondition.of(
                    Condition.RETURN_WARM_ENOUGH, air.get(), LOWEST_RETURN, Remedy.LOAD_THE_HOUSE, Remedy.WEIGH_IN));
        }
        airflow(system, readings, airflow).ifPresent(failing::add);
        for (Condition condition : denied) {
            if (failing.stream().noneMatch(failed -> failed.condition() == condition)) {
                failing.add(FailedCondition.of(condition, remedies(condition)));
            }
        }
        // ice that was seen says it already
        if (!denied.contains(Condition.COIL_FREE_OF_ICE)
                && evaporating.filter(t -> t.compareTo(FREEZING) < 0).isPresent()) {
            failing.add(FailedCondition.of(
                    Condition.COIL_ABOVE_FREEZING,
                    Remedy.LOOK_FOR_ICE,
                    Remedy.RESTORE_AIRFLOW,
                    Remedy.FIND_LEAK_OR_RESTRICTION));
        }
        return failing;
    }

    private static boolean below(Reading reading, Reading limit) {
        return reading.base() < limit.base() * (1 - ROUNDING);
    }

    /** What to do about a condition that was seen to fail. */
    private static Remedy[] remedies(Condition condition) {
        return switch (condition) {
            case COIL_FREE_OF_ICE -> new Remedy[] {Remedy.THAW, Remedy.RESTORE_AIRFLOW};
            case RUN_LONG_ENOUGH -> new Remedy[] {Remedy.KEEP_RUNNING};
            case AIRFLOW_SUFFICIENT -> new Remedy[] {Remedy.RESTORE_AIRFLOW};
            default -> new Remedy[] {Remedy.MEASURE_AGAIN};
        };
    }

    private static Optional<FailedCondition> outdoor(SystemUnderTest system, Readings readings) {
        return readings.find(Quantity.OUTDOOR_TEMPERATURE)
                .filter(outdoor -> below(outdoor, LOWEST_OUTDOOR) && !byMakersChart(system, readings))
                .map(outdoor -> {
                    boolean winterSetUp = system.meteringDevice().chargeMethod() == ChargeMethod.SUBCOOLING
                            && outdoor.temperature().compareTo(WINTER_ABOVE.temperature()) > 0;
                    Remedy[] remedies = winterSetUp
                            ? new Remedy[] {Remedy.WEIGH_IN, Remedy.WINTER_SET_UP, Remedy.COME_BACK_WHEN_WARMER}
                            : new Remedy[] {Remedy.WEIGH_IN, Remedy.COME_BACK_WHEN_WARMER};
                    return FailedCondition.of(Condition.OUTDOOR_WARM_ENOUGH, outdoor, LOWEST_OUTDOOR, remedies);
                });
    }

    /**
     * Whether it is colder outdoors than the general targets hold, and the maker's own chart was read out for this
     * outdoor temperature: then it decides. California Energy Commission RA3.2 has the maker's instructions first.
     */
    public static boolean byMakersChart(SystemUnderTest system, Readings readings) {
        Optional<Reading> outdoor = readings.find(Quantity.OUTDOOR_TEMPERATURE);
        return outdoor.isPresent()
                && below(outdoor.get(), LOWEST_OUTDOOR)
                && system.makersTarget()
                        .filter(target -> target.covers(outdoor.get().temperature()))
                        .isPresent();
    }

    /** Whether a restrictor may be set up at this outdoor temperature. */
    public static boolean forRestrictor(Temperature outdoor) {
        return outdoor.compareTo(WINTER_ABOVE.temperature()) > 0 && outdoor.compareTo(WINTER_BELOW.temperature()) < 0;
    }

    /** What a restrictor on the condenser asks for: a cold day, but not too cold, and the pressures of a warm one. */
    private static Optional<FailedCondition> winter(SystemUnderTest system, Readings readings) {
        Optional<Reading> outdoor = readings.find(Quantity.OUTDOOR_TEMPERATURE);
        Optional<FailedCondition> tooCold = outdoor.filter(
                        air -> air.temperature().compareTo(WINTER_ABOVE.temperature()) <= 0)
                .map(air -> FailedCondition.of(Condition.OUTDOOR_WARM_ENOUGH, air, WINTER_ABOVE, Remedy.WEIGH_IN));
        Optional<FailedCondition> tooWarm = outdoor.filter(
                        air -> air.temperature().compareTo(WINTER_BELOW.temperature()) >= 0)
                .map(air -> FailedCondition.of(
                        Condition.OUTDOOR_COOL_ENOUGH, air, WINTER_BELOW, Remedy.TAKE_RESTRICTOR_OFF));
        return tooCold.or(() -> tooWarm).or(() -> differenceNotHeld(system, readings));
    }

    private static Optional<FailedCondition> differenceNotHeld(SystemUnderTest system, Readings readings) {
        return readings.find(Quantity.LIQUID_PRESSURE)
                .flatMap(liquid -> readings.find(Quantity.SUCTION_PRESSURE)
                        .map(suction -> WinterSetUp.judge(
                                system.refrigerant(),
                                liquid.gaugePressure(),
                                suction.gaugePressure(),
                                system.atmosphere())))
                .filter(held -> held.outcome() != WinterSetUp.Outcome.HOLD)
                .map(held -> FailedCondition.of(Condition.PRESSURE_DIFFERENCE_HELD, Remedy.ADJUST_RESTRICTOR));
    }

    /**
     * What is to be told with a verdict that compares: that nothing shows the airflow. An independent verifier is told
     * whatever the verdict, an installer where refrigerant would be moved.
     */
    public static Optional<FailedCondition> airflowNotShown(
            SystemUnderTest system, AirflowEvidence airflow, boolean moves) {
        boolean asked = moves || system.limits() == Limits.INDEPENDENT_VERIFIER;
        return asked && !airflow.shown() ? Optional.of(FailedCondition.of(Condition.AIRFLOW_SHOWN)) : Optional.empty();
    }

    private static Optional<FailedCondition> airflow(
            SystemUnderTest system, Readings readings, AirflowEvidence airflow) {
        OptionalDouble perTon = airflow.perTon();
        if (perTon.isPresent()) {
            return !AirflowPerTon.enough(perTon.getAsDouble())
                    ? Optional.of(new FailedCondition(
                            Condition.AIRFLOW_SUFFICIENT,
                            readings.find(Quantity.AIRFLOW),
                            Optional.empty(),
                            Optional.empty(),
                            List.of(Remedy.RESTORE_AIRFLOW)))
                    : Optional.empty();
        }
        if (airflow.splitDeviation().isEmpty()) {
            return Optional.empty();
        }
        TemperatureDifference deviation = airflow.splitDeviation().get();
        Comparison split = Comparison.of(
                deviation, TemperatureDifference.kelvins(0), system.limits().temperatureSplit());
        return switch (split.position()) {
            case INSIDE -> Optional.empty();
            case ABOVE ->
                Optional.of(FailedCondition.of(
                        Condition.AIRFLOW_SUFFICIENT, deviation, Remedy.RESTORE_AIRFLOW, Remedy.MEASURE_AGAIN));
            case BELOW ->
                Optional.of(FailedCondition.of(
                        Condition.CAPACITY_PLAUSIBLE, deviation, Remedy.MEASURE_AGAIN, Remedy.CHECK_CAPACITY));
        };
    }
}
