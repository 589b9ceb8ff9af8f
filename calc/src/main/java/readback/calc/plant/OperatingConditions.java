package readback.calc.plant;

import readback.calc.air.MoistAir;
import readback.calc.quantity.Atmosphere;

/**
 * Weather and disturbance as the equations take them.
 *
 * @param outdoor K
 * @param charge refrigerant in the circuit, kg
 */
record OperatingConditions(double outdoor, MoistAir returnAir, double charge, Disturbance disturbance) {

    /** Mass of air that a fan moves, relative to sea level: fans move volume. */
    double thinAir() {
        return returnAir.pressure().pascals() / Atmosphere.SEA_LEVEL.pascals();
    }
}
