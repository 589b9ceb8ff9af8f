package readback.assistant.dialogue;

import java.time.Instant;

/**
 * Where a value came from that a probe offered and the technician took.
 *
 * @param probe number by which the probe was spoken of
 * @param channel its name in the mapping
 * @param raw what the instrument gave, before any conversion: number or registers, and unit
 * @param measuredAt when it gave it
 */
public record ProbeSource(int probe, String channel, String raw, Instant measuredAt) {}
