package readback.assistant.record;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/**
 * One line of a record after the header: an event, what it led to, and what was said about it.
 *
 * @param number 1 for the first event
 * @param said the shown form of everything said in answer
 * @param closed whether the session ended with this event
 * @param audio the sound that was heard, where it was kept; {@link SessionRecord#append} fills it in
 */
public record Entry(
        int number, Event event, Turn.Outcome outcome, List<String> said, boolean closed, Optional<AudioClip> audio) {

    public Entry {
        said = List.copyOf(said);
    }

    /** An entry that neither ends the session nor has sound. */
    public Entry(int number, Event event, Turn.Outcome outcome, List<String> said) {
        this(number, event, outcome, said, false, Optional.empty());
    }

    /** The entry of a turn, before it is known whether its sound could be kept. */
    public static Entry of(int number, Event event, Turn turn, List<String> said) {
        return new Entry(number, event, turn.outcome(), said, turn.state().closed(), Optional.empty());
    }

    Entry with(AudioClip clip) {
        return new Entry(number, event, outcome, said, closed, Optional.of(clip));
    }
}
