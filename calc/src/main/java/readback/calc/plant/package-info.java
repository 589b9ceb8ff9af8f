/**
 * A running split air-conditioner by calculation: {@link readback.calc.plant.AirConditioner} in
 * {@link readback.calc.plant.Weather} with {@link readback.calc.plant.FaultSet} gives an
 * {@link readback.calc.plant.OperatingPoint}, {@link readback.calc.plant.Transient} its way there, and
 * {@link readback.calc.plant.InstrumentSet} what gauges and probes show of it, {@link readback.calc.plant.Inspection}
 * what is found by looking. It is the truth that the judgement is measured against and that an apprentice practises on;
 * it never takes part in a judgement.
 *
 * <p>A practice model: standard zone equations with published compressor maps and orifice law, a few parameters fitted
 * to a charging chart. Good for signs, sizes and order of magnitude, not for the design of equipment.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.plant;
