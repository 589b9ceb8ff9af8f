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

    /** The refrigerant in the liquid line in kg, when filled with liquid of this state. */
    public double liquidMass(FluidState state) {
        return massPerMetre(liquid, state) * metres;
    }

    /** The refrigerant in the suction line in kg, when filled with vapour of this state. */
    public double suctionMass(FluidState state) {
        return massPerMetre(suction, state) * metres;
    }

    /** How many kg of refrigerant of this state stand in a metre of soft tube. */
    public static double massPerMetre(TubeSize tube, FluidState state) {
        return tube.volumePerMetre(Temper.ANNEALED) * state.density();
    }
}
