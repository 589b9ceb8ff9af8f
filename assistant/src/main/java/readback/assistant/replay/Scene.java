package readback.assistant.replay;

import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;

/**
 * One recorded event and what the dialogue makes of it today.
 *
 * @param before the state that the event met; for the first event the state after it
 */
public record Scene(Entry entry, State before, Turn turn) {}
