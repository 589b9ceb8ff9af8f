/**
 * Whether a stated value is believable: by itself, for the refrigerant, and beside the other readings. Open
 * {@link readback.calc.plausibility.Plausibility} first. What the values mean is not asked here.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.plausibility;
