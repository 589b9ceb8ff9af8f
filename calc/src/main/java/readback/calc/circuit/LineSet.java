package readback.calc.circuit;

import readback.calc.circuit.TubeSize.Temper;
import readback.calc.fluid.FluidState;
import readback.calc.quantity.OutOfRangeException;

/**
 * The two tubes between the outdoor and the indoor unit of a split system, of soft copper.
 *
 * @param metres length of each tube, 0 to 200
 */
public record LineSet(TubeSize liquid, TubeSize suction, double metres) {

    private static final double LONGEST = 200;

    /** @throws OutOfRangeException if the length is outside its range */
    public LineSet {
        if (!(metres >= 0 && metres <= LONGEST)) {
            throw new OutOfRangeException("line length", metres, "m", "0 to " + LONGEST + " m");
        }
    }

    /** How many kg of refrigerant of this state stand in a metre of soft tube. */
    public static double massPerMetre(TubeSize tube, FluidState state) {
        return tube.volumePerMetre(Temper.ANNEALED) * state.density();
    }
}
