package readback.calc.fluid;

import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

/**
 * A refrigerant in one phase.
 *
 * @param density kg/m³
 * @param enthalpy J/kg, 200 kJ/kg in saturated liquid at 0 °C (IIR)
 * @param entropy J/(kg K), 1 kJ/(kg K) in saturated liquid at 0 °C (IIR)
 * @param heatCapacity at constant pressure, J/(kg K)
 * @param speedOfSound m/s
 */
public record FluidState(
        Temperature temperature,
        AbsolutePressure pressure,
        double density,
        double enthalpy,
        double entropy,
        double heatCapacity,
        double speedOfSound) {}
