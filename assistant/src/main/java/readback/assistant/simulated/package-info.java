/**
 * A simulated air-conditioner and someone at it: what is wrong, what the instruments show, what is found by looking,
 * what comes of moving refrigerant. Open {@link readback.assistant.simulated.Site} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.simulated;
