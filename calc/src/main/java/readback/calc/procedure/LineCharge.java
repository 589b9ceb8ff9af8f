package readback.calc.procedure;

import java.util.List;
import java.util.Optional;
import readback.calc.circuit.LineSet;
import readback.calc.circuit.TubeSize;
import readback.calc.fact.FactTable;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/**
 * How much charge a line set needs beyond what the nameplate covers: mass a foot times length, less the same for the
 * line that the nameplate includes. The maker's figure comes before those here; figures and standing in
 * line-charge.txt.
 */
public final class LineCharge {

    /** One equipment manual: 6 oz for each filter-drier added. */
    public static final Mass FILTER_DRIER = Mass.ounces(6);

    private static final List<Rate> RATES = FactTable.lines(LineCharge.class, "line-charge.txt").stream()
            .map(Rate::of)
            .toList();

    /** A liquid tube may be stated a hair off its nominal size. */
    private static final double SAME_SIZE_METRES = 0.0003;

    private static final Temperature USUAL_LIQUID = Temperature.fahrenheit(100);
    private static final Temperature USUAL_VAPOUR = Temperature.fahrenheit(40);

    private LineCharge() {}

    /**
     * Refrigerant in a metre of a liquid line, with that of the vapour line beside it.
     *
     * @param liquidTubeMetres outside diameter
     */
    private record Rate(double liquidTubeMetres, String refrigerant, double kilogramsPerMetre) {

        static Rate of(List<String> line) {
            return new Rate(
                    Unit.INCH.toBase(Double.parseDouble(line.get(0))),
                    line.get(1),
                    Unit.OUNCE.toBase(Double.parseDouble(line.get(2))) / Unit.FOOT.toBase(1));
        }
    }

    /**
     * The published field figure in kilograms a metre; absent where none was found, and then the maker's must be asked.
     *
     * @param liquidTubeMetres outside diameter of the liquid line
     */
    public static Optional<Double> kilogramsPerMetre(Refrigerant refrigerant, double liquidTubeMetres) {
        return RATES.stream()
                .filter(rate -> rate.refrigerant.equals(refrigerant.designation())
                        && Math.abs(rate.liquidTubeMetres - liquidTubeMetres) < SAME_SIZE_METRES)
                .map(Rate::kilogramsPerMetre)
                .findFirst();
    }

    /**
     * What the bores hold, in kilograms a metre: saturated liquid of 100 °F in the liquid line, saturated vapour of 40
     * °F in the suction line. For refrigerants and sizes without a published figure; announce it as computed. ASTM B280
     * bores and the equation of state; the two temperatures are usual ones.
     */
    public static double computedKilogramsPerMetre(Refrigerant refrigerant, TubeSize liquid, TubeSize suction) {
        return LineSet.massPerMetre(liquid, refrigerant.saturatedLiquid(USUAL_LIQUID))
                + LineSet.massPerMetre(suction, refrigerant.saturatedVapour(USUAL_VAPOUR));
    }

    /**
     * What must go in beyond the nameplate; negative means that the nameplate holds too much for so short a line.
     *
     * @param kilogramsPerMetre of the line as built
     * @param lengthMetres as built
     * @param includedKilogramsPerMetre of the line that the nameplate includes
     * @param includedMetres length that the nameplate includes: ask, never assume
     * @throws OutOfRangeException for a negative length or rate
     */
    public static Mass adjustment(
            double kilogramsPerMetre, double lengthMetres, double includedKilogramsPerMetre, double includedMetres) {
        refuseNegative("charge per length", kilogramsPerMetre, "kg/m");
        refuseNegative("line length", lengthMetres, "m");
        refuseNegative("included charge per length", includedKilogramsPerMetre, "kg/m");
        refuseNegative("included line length", includedMetres, "m");
        return Mass.kilograms(kilogramsPerMetre * lengthMetres - includedKilogramsPerMetre * includedMetres);
    }

    /**
     * The whole charge to weigh into an empty system. Valid at any outdoor temperature (California Energy Commission
     * RA3.2).
     *
     * @param filterDriers what those hold that were added
     * @throws OutOfRangeException if nothing or less would remain
     */
    public static Mass weighIn(Mass nameplate, Mass lineAdjustment, Mass filterDriers) {
        Mass total = nameplate.plus(lineAdjustment).plus(filterDriers);
        if (total.kilograms() <= 0) {
            throw new OutOfRangeException("charge to weigh in", total.kilograms(), "kg", "above 0 kg");
        }
        return total;
    }

    private static void refuseNegative(String what, double value, String unit) {
        if (!(value >= 0)) {
            throw new OutOfRangeException(what, value, unit, "0 or more");
        }
    }
}
