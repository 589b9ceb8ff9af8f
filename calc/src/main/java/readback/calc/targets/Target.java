package readback.calc.targets;

import readback.calc.quantity.TemperatureDifference;

/**
 * What superheat or subcooling should be.
 *
 * @param standardUncertainty what the instruments that the target was looked up with make of it; zero for a plate value
 */
public record Target(TemperatureDifference value, TargetSource source, TemperatureDifference standardUncertainty) {

    static final TemperatureDifference EXACT = TemperatureDifference.kelvins(0);
}
