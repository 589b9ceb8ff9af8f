package readback.calc.diagnosis;

import readback.calc.charge.Judgement;

/**
 * What to tell the technician: the judgement, with its verdict withheld where another fault comes first, and the
 * diagnosis behind it.
 */
public record Advice(Judgement judgement, Diagnosis diagnosis) {}
