/**
 * Whether the refrigerant charge is right, how much to move, and whether the compressor is safe meanwhile. Open
 * {@link readback.calc.charge.ChargeJudge} first, then {@link readback.calc.charge.Judgement}. What it judges from
 * lives in {@link readback.calc.measurement}, {@link readback.calc.condition}, {@link readback.calc.targets} and
 * {@link readback.calc.plausibility}; other faults than the charge in {@link readback.calc.diagnosis}.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.charge;
