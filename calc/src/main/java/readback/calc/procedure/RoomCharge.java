package readback.calc.procedure;

import java.util.List;
import java.util.Optional;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.fact.FactTable;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

/**
 * The largest charge of a refrigerant that burns slowly (A2L) for the rooms that a unit serves, by the manner of UL
 * 60335-2-40 and ASHRAE 15.2. All formulas from memory; the maker's table and the local code decide.
 *
 * @param unlimited up to this charge no room is too small
 * @param plain what the rooms allow where nothing stirs the air
 * @param withDetection what they allow where a leak detector starts the fan
 */
public record RoomCharge(Mass unlimited, Mass plain, Mass withDetection) {

    /** What a charge means for the rooms. */
    public enum Outcome {
        ALLOWED,
        /** Only where the maker provides leak detection that starts the fan. */
        ONLY_WITH_DETECTION,
        TOO_MUCH
    }

    /** m₁ = 6 m³ · LFL, the floor of the whole rule. UL 60335-2-40 (4th edition), from memory. */
    private static final double UNLIMITED_CUBIC_METRES = 6;

    /** m = 2.5 · LFL^(5/4) · h₀ · √A for a leak into still air. IEC and UL 60335-2-40, annex GG, from memory. */
    private static final double STILL_AIR = 2.5;

    private static final double STILL_AIR_EXPONENT = 1.25;

    /** h₀ of a wall unit, in metres: the lowest of those that serve whole rooms. Same source, from memory. */
    private static final double OUTLET_METRES = 1.8;

    /** Half the lower flammable limit in a room of 2.2 m. ASHRAE 15.2-2022, from memory. */
    private static final double CONCENTRATION_FACTOR = 0.5;

    private static final double CEILING_METRES = 2.2;

    /** m₂ = 52 m³ · LFL: above it detection does not help either. Same source, from a page that cites it. */
    private static final double MOST_CUBIC_METRES = 52;

    private static final List<List<String>> LIMITS = FactTable.lines(RoomCharge.class, "lower-flammable-limits.txt");

    /** In kg/m³; empty where none is known here. */
    private static Optional<Double> lowerFlammableLimit(Refrigerant refrigerant) {
        return LIMITS.stream()
                .filter(line -> line.get(0).equals(refrigerant.designation()))
                .map(line -> Double.valueOf(line.get(1)))
                .findFirst();
    }

    /**
     * Whether the rooms matter for this charge: the refrigerant burns, its limit is known, and the charge is above what
     * every room may take.
     */
    public static boolean matters(Refrigerant refrigerant, Mass charge) {
        return lowerFlammableLimit(refrigerant)
                .filter(limit -> charge.compareTo(Mass.kilograms(UNLIMITED_CUBIC_METRES * limit)) > 0)
                .isPresent();
    }

    /**
     * The limits for rooms of this area; empty where the refrigerant's lower flammable limit is not known here.
     *
     * @param squareMetres floor area, above 0
     * @throws OutOfRangeException for no area
     */
    public static Optional<RoomCharge> of(Refrigerant refrigerant, double squareMetres) {
        if (!(squareMetres > 0)) {
            throw new OutOfRangeException("room area", squareMetres, "m²", "above 0 m²");
        }
        return lowerFlammableLimit(refrigerant).map(limit -> {
            double unlimited = UNLIMITED_CUBIC_METRES * limit;
            double still = STILL_AIR * Math.pow(limit, STILL_AIR_EXPONENT) * OUTLET_METRES * Math.sqrt(squareMetres);
            double stirred =
                    Math.min(CONCENTRATION_FACTOR * limit * CEILING_METRES * squareMetres, MOST_CUBIC_METRES * limit);
            double plain = Math.max(unlimited, Math.min(still, stirred));
            return new RoomCharge(
                    Mass.kilograms(unlimited), Mass.kilograms(plain), Mass.kilograms(Math.max(plain, stirred)));
        });
    }

    /** What to look out for with this charge. */
    public List<Caution> cautions(Mass charge) {
        return judge(charge) == Outcome.TOO_MUCH ? List.of(CautionRule.CHARGE_ABOVE_ROOM_LIMIT.caution()) : List.of();
    }

    /** What this charge means; a charge at a limit is allowed. */
    public Outcome judge(Mass charge) {
        if (charge.compareTo(plain) <= 0) {
            return Outcome.ALLOWED;
        }
        return charge.compareTo(withDetection) <= 0 ? Outcome.ONLY_WITH_DETECTION : Outcome.TOO_MUCH;
    }
}
