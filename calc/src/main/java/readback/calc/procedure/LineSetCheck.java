package readback.calc.procedure;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

/**
 * Whether a line set is so long or rises so high that the maker's long-line guide must be asked, and whether the liquid
 * reaches the coil as liquid.
 *
 * @param lengthMetres one way
 * @param liftMetres from the outdoor unit up to the coil, 0 to 100; empty where it was not told
 */
public record LineSetCheck(double lengthMetres, Optional<Double> liftMetres) {

    /** Two equipment makers' guides begin there for 3/8 in.; thinner lines may be longer. */
    private static final double LONG = Unit.FOOT.toBase(80);

    /** One of these guides, for a heat pump below its coil; an air conditioner may rise 35 ft. */
    private static final double HIGH = Unit.FOOT.toBase(20);

    /** The same guide asks for an expansion valve from there; a shorter line hardly rises so high. */
    private static final double MAY_BE_HIGH = Unit.FOOT.toBase(50);

    /** Whether the lift is worth asking for. */
    public boolean liftMatters() {
        return lengthMetres > MAY_BE_HIGH;
    }

    /** What the lift costs, where it was told. */
    public Optional<LiquidLift> lift(Refrigerant refrigerant) {
        return liftMetres.map(metres -> LiquidLift.of(refrigerant, metres));
    }

    /**
     * What to look out for, the gravest first.
     *
     * @param subcooling of the liquid that leaves the outdoor unit
     */
    public List<Caution> cautions(Refrigerant refrigerant, TemperatureDifference subcooling) {
        Set<CautionRule> fired = EnumSet.noneOf(CautionRule.class);
        if (lift(refrigerant).filter(lift -> lift.flashes(subcooling)).isPresent()) {
            fired.add(CautionRule.LIQUID_FLASHES_ON_THE_WAY);
        }
        if (lengthMetres > LONG || liftMetres.filter(lift -> lift > HIGH).isPresent()) {
            fired.add(CautionRule.LONG_LINE_SET);
        }
        return fired.stream().map(CautionRule::caution).toList();
    }
}
