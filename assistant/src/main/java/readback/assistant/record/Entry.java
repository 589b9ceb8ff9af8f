package readback.assistant.record;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/**
 * One line of a record after the header: an event, what it led to, and what was said about it.
 *
 * @param number 1 for the first event
 * @param said the shown form of everything told in answer
 * @param spoken of that, what was meant for the ear, as it was worded for it; empty in records of earlier versions
 * @param closed whether the session ended with this event
 * @param audio the sound that was heard, where it was kept; {@link SessionRecord#append} fills it in
 */
public record Entry(
        int number,
        Event event,
        Turn.Outcome outcome,
        List<String> said,
        List<String> spoken,
        boolean closed,
        Optional<AudioClip> audio) {

    public Entry {
        said = List.copyOf(said);
        spoken = List.copyOf(spoken);
    }

    /** An entry that neither ends the session nor has sound, and nothing of which was spoken. */
    public Entry(int number, Event event, Turn.Outcome outcome, List<String> said) {
        this(number, event, outcome, said, List.of(), false, Optional.empty());
    }

    /** The entry of a turn, before it is known whether its sound could be kept. */
    public static Entry of(int number, Event event, Turn turn, List<String> said, List<String> spoken) {
        return new Entry(
                number, event, turn.outcome(), said, spoken, turn.state().closed(), Optional.empty());
    }

    Entry with(AudioClip clip) {
        return new Entry(number, event, outcome, said, spoken, closed, Optional.of(clip));
    }
}
