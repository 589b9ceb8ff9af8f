/**
 * What follows from refrigerant properties inside the refrigerant circuit: how much refrigerant stands in the lines.
 * Judging the charge is not done here.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.circuit;
