package readback.assistant.record;

import java.time.Instant;

/**
 * What someone wrote about a session afterwards.
 *
 * @param by who wrote it, as they name themselves
 * @param about hash of the session's last line when the remark was written: what they had seen
 */
public record Remark(Instant at, String by, String text, String about) {}
