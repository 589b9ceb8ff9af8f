/**
 * Instruments that give values by themselves, by open standards: which are there and what each channel means, how their
 * bytes become numbers, when a number stands still long enough to be offered. Knows nothing of screen, ear and voice;
 * what comes out is an event of the dialogue. Open {@link readback.assistant.probe.ProbeWatch} first. Decision 0026.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.probe;
