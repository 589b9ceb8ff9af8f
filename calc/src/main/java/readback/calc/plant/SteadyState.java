package readback.calc.plant;

import readback.calc.plant.OperatingPoint.NoSteadyState;
import readback.calc.plant.OperatingPoint.Reason;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * Solves one unit in one weather: at once from usual starts; if they fail, by asking whether a limit is in the way; and
 * if that does not tell, by walking from the rating point, where the solution is known, towards what is asked.
 */
final class SteadyState {

    private static final double FIRST_STRIDE = 0.25;
    private static final double LEAST_STRIDE = 0.004;

    /** Single-phase compressor on a 230 V supply, power factor 0.95; from memory. */
    private static final double VOLTS_TIMES_POWER_FACTOR = 230 * 0.95;

    private final AirConditioner unit;
    private final Circuit circuit;
    private final Weather weather;

    SteadyState(AirConditioner unit, Weather weather) {
        this.unit = unit;
        this.circuit = unit.circuit();
        this.weather = weather;
    }

    OperatingPoint with(Disturbance disturbance) {
        OperatingConditions asked = setting(weather, disturbance);
        for (double[] start : Newton.coldStarts(circuit, asked)) {
            Trial trial = Newton.from(circuit, asked, start);
            if (Newton.solved(trial)) {
                return result(trial);
            }
        }
        Reason reason = reason(asked, Newton.atHighPressure(circuit, asked), Newton.atLowPressure(circuit, asked));
        return reason == Reason.UNKNOWN ? walk(asked) : new NoSteadyState(reason);
    }

    private OperatingPoint walk(OperatingConditions asked) {
        OperatingConditions rating = setting(Weather.RATING, new Disturbance());
        Trial last =
                Newton.from(circuit, rating, Newton.coldStarts(circuit, rating).get(0));
        double done = 0;
        double stride = FIRST_STRIDE;
        while (done < 1 && stride > LEAST_STRIDE) {
            double share = Math.min(1, done + stride);
            Trial next = Newton.from(circuit, between(share, asked.disturbance()), Newton.state(last));
            if (Newton.solved(next)) {
                last = next;
                done = share;
                stride *= 1.5;
            } else {
                stride /= 2;
            }
        }
        if (done >= 1) {
            return result(last);
        }
        double[] state = Newton.state(last);
        return new NoSteadyState(reason(asked, state, state));
    }

    private OperatingConditions between(double share, Disturbance disturbance) {
        Weather part = Weather.of(
                Temperature.kelvin(mixed(Weather.RATING.outdoor(), weather.outdoor(), share)),
                Temperature.kelvin(mixed(
                        Weather.RATING.returnAir().dryBulb(),
                        weather.returnAir().dryBulb(),
                        share)),
                Temperature.kelvin(mixed(
                        Weather.RATING.returnAir().wetBulb(),
                        weather.returnAir().wetBulb(),
                        share)),
                AbsolutePressure.pascals(Weather.RATING.atmosphere().pascals() * (1 - share)
                        + weather.atmosphere().pascals() * share));
        return setting(part, disturbance.part(share));
    }

    private static double mixed(Temperature from, Temperature to, double share) {
        return from.kelvin() * (1 - share) + to.kelvin() * share;
    }

    private OperatingConditions setting(Weather air, Disturbance disturbance) {
        return new OperatingConditions(
                air.outdoor().kelvin(), air.returnAir(), circuit.ratedCharge() * disturbance.charge, disturbance);
    }

    /**
     * Why there is no steady state. At the limit of the switch the circuit would hold some charge; if it holds at least
     * as much, the pressure has to rise beyond. At the limit of vacuum it is the other way round.
     */
    private Reason reason(OperatingConditions asked, double[] high, double[] low) {
        double opens = unit.highPressureSwitch().pascals();
        double vacuum = weather.atmosphere().pascals();
        Trial atSwitch = Newton.from(circuit, asked, trial -> trial.dischargePressure / opens - 1, high);
        if (Newton.solved(atSwitch) && atSwitch.charge <= asked.charge()) {
            return Reason.HIGH_PRESSURE_CUT_OUT;
        }
        Trial atVacuum = Newton.from(circuit, asked, trial -> 0.2 * (suctionPressure(trial) / vacuum - 1), low);
        return Newton.solved(atVacuum) && atVacuum.charge >= asked.charge() ? Reason.SUCTION_IN_VACUUM : Reason.UNKNOWN;
    }

    private double suctionPressure(Trial trial) {
        return circuit.fluid().dewPressure(trial.evaporating);
    }

    private OperatingPoint result(Trial trial) {
        if (trial.dischargePressure >= unit.highPressureSwitch().pascals()) {
            return new NoSteadyState(Reason.HIGH_PRESSURE_CUT_OUT);
        }
        if (suctionPressure(trial) <= weather.atmosphere().pascals()) {
            return new NoSteadyState(Reason.SUCTION_IN_VACUUM);
        }
        FluidTable fluid = circuit.fluid();
        double liquidSaturation = fluid.bubbleTemperature(trial.liquidPressure);
        double glide = fluid.dewTemperature(trial.liquidPressure) - liquidSaturation;
        double liquidLine = trial.condenser.quality > 0
                ? liquidSaturation + trial.condenser.quality * glide
                : Math.min(liquidSaturation, fluid.liquidTemperature(trial.liquidEnthalpy));
        double beyond = Math.min(liquidLine, fluid.bubbleTemperature(trial.restrictedPressure));
        Measurands at = new Measurands(
                AbsolutePressure.pascals(suctionPressure(trial)),
                AbsolutePressure.pascals(trial.liquidPressure),
                Temperature.kelvin(trial.evaporating + Math.max(0, trial.suctionSuperheat)),
                Temperature.kelvin(liquidLine),
                Temperature.kelvin(trial.condenser.discharge),
                Temperature.kelvin(trial.evaporator.supply),
                trial.power / VOLTS_TIMES_POWER_FACTOR);
        OperatingPoint.Heat heat = new OperatingPoint.Heat(
                trial.flow * (trial.evaporator.leaving - trial.liquidEnthalpy),
                trial.evaporator.sensible,
                trial.flow * (trial.suctionEnthalpy - trial.evaporator.leaving),
                trial.power,
                trial.flow * (trial.dischargeEnthalpy - trial.condenser.leaving),
                (1 - Compressor.HEAT_KEPT) * trial.power,
                trial.flow,
                trial.charge);
        return new OperatingPoint.Running(
                at,
                Temperature.kelvin(trial.evaporating),
                Temperature.kelvin(trial.condensing),
                TemperatureDifference.kelvins(trial.suctionSuperheat),
                TemperatureDifference.kelvins(liquidSaturation - liquidLine),
                Temperature.kelvin(beyond),
                heat);
    }
}
