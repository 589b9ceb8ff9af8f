/**
 * How well the judgement does on units whose trouble is known: {@link readback.assistant.bench.Bench} makes service
 * calls at simulated units of {@link readback.calc.plant} through the real dialogue, with a technician who answers
 * every step, and counts what was said and done against the truth. There everything is typed;
 * {@link readback.assistant.bench.ClosedLoop} lets a voice say it and the ear hear it.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.bench;
