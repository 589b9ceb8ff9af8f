package readback.calc.fluid;

/**
 * A component of a blend.
 *
 * @param designation as in "R-32"
 * @param massFraction nominal, of the blend as charged; 0 to 1
 */
public record Ingredient(String designation, double massFraction) {}
