/**
 * Whether the refrigerant charge is right: methods, conditions, targets, superheat, subcooling and verdicts, each with
 * its uncertainty; and whether a stated value is believable at all. Open {@link readback.calc.charge.ChargeJudge}
 * first, then {@link readback.calc.charge.Judgement}. Other faults than the charge live in
 * {@link readback.calc.diagnosis}.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.charge;
