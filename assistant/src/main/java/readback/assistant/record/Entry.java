package readback.assistant.record;

import java.util.List;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/**
 * One line of a record after the header: an event, what it led to, and what was said about it.
 *
 * @param number 1 for the first event
 * @param said the shown form of everything said in answer
 */
public record Entry(int number, Event event, Turn.Outcome outcome, List<String> said) {
    public Entry {
        said = List.copyOf(said);
    }
}
