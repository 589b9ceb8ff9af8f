package readback.calc.plant;

import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

/**
 * The true values where instruments are put.
 *
 * @param suctionPressure at the service port of the vapour line
 * @param liquidPressure at the service port of the liquid line
 * @param suctionLine pipe at the outdoor unit; at saturation when the vapour is wet
 * @param liquidLine pipe at the outdoor unit; between bubble and dew point when there are bubbles in it
 * @param dischargeLine at the compressor
 * @param supplyAir dry bulb behind indoor coil and blower
 * @param amperes compressor current
 */
public record Measurands(
        AbsolutePressure suctionPressure,
        AbsolutePressure liquidPressure,
        Temperature suctionLine,
        Temperature liquidLine,
        Temperature dischargeLine,
        Temperature supplyAir,
        double amperes) {}
