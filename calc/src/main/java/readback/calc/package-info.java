/**
 * What is true: refrigerants, moist air, superheat and subcooling, targets, verdicts, diagnosis and cautions. No input,
 * no output, no clock, and no dependency on the other modules.
 */
@org.jspecify.annotations.NullMarked
package readback.calc;
