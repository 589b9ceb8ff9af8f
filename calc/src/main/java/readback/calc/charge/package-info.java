/** Whether the refrigerant charge is right: methods, conditions, targets, superheat, subcooling and verdicts. */
@org.jspecify.annotations.NullMarked
package readback.calc.charge;
