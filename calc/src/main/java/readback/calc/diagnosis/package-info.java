/**
 * What is wrong when it may not be the charge: faults ranked by evidence, each symptom a deviation from expectation in
 * units of its uncertainty. Open {@link readback.calc.diagnosis.Advisor} first. Judging the charge itself lives in
 * {@link readback.calc.charge}.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.diagnosis;
