/**
 * What must hold before a charge reading means anything, whether it does, and what to do where it does not. Open
 * {@link readback.calc.condition.Condition} first. Targets and verdicts live elsewhere.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.condition;
