package readback.calc.plant;

import java.util.Optional;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Where a running air-conditioner settles. */
public sealed interface OperatingPoint {

    /**
     * A steady state.
     *
     * @param at what instruments would be put on
     * @param evaporating dew point at the suction port
     * @param condensing dew point of the refrigerant alone entering the condenser
     * @param superheat of the vapour that enters the compressor; negative for wet vapour, a kelvin for each twentieth
     *     of liquid in it, so that it goes on falling with more liquid
     * @param subcooling bubble point at the liquid port's pressure less the pipe's temperature, as it would be
     *     measured: below zero where a blend arrives with bubbles
     * @param beyondRestriction liquid line after what restricts it, where the indoor unit begins
     * @param heat what flows
     */
    record Running(
            Measurands at,
            Temperature evaporating,
            Temperature condensing,
            TemperatureDifference superheat,
            TemperatureDifference subcooling,
            Temperature beyondRestriction,
            Heat heat)
            implements OperatingPoint {

        @Override
        public Optional<Running> running() {
            return Optional.of(this);
        }
    }

    /**
     * What flows in a steady state, in W and kg/s.
     *
     * @param capacity taken from the indoor air
     * @param sensible the part of it that cools the air; the rest dries it
     * @param suctionGain taken by the suction line from outdoor air
     * @param power of the compressor
     * @param rejected given to the outdoor air by the condenser
     * @param shellLoss given to the outdoor air by the compressor
     * @param flow of refrigerant, kg/s
     * @param charge of refrigerant, kg
     */
    record Heat(
            double capacity,
            double sensible,
            double suctionGain,
            double power,
            double rejected,
            double shellLoss,
            double flow,
            double charge) {}

    /** No steady state: the unit stops. */
    record NoSteadyState(Reason reason) implements OperatingPoint {

        @Override
        public Optional<Running> running() {
            return Optional.empty();
        }
    }

    /** Why there is no steady state. */
    enum Reason {
        /** The pressure switch of the high side opens. */
        HIGH_PRESSURE_CUT_OUT,
        /** The compressor pulls the low side below the local air pressure. */
        SUCTION_IN_VACUUM,
        /** The equations were not solved, and the way there does not tell why. */
        UNKNOWN
    }

    /** The steady state, if there is one. */
    Optional<Running> running();

    /**
     * Where the unit settles.
     *
     * @throws IllegalArgumentException for a fault that a unit with this metering device cannot have
     */
    static OperatingPoint solve(AirConditioner unit, Weather weather, FaultSet faults) {
        if (!faults.possibleWith(unit.plate().meteringDevice().chargeMethod())) {
            throw new IllegalArgumentException(
                    "no such fault with " + unit.plate().meteringDevice() + ": " + faults);
        }
        return new SteadyState(unit, weather).with(faults.disturbance());
    }
}
