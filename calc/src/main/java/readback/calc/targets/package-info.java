/**
 * What superheat or subcooling should be, and where that is known from: rating plate, charging table or estimate. Open
 * {@link readback.calc.targets.Target} first. What follows from a target lives in {@link readback.calc.charge}.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.targets;
