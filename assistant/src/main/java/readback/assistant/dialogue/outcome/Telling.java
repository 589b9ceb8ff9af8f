package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import readback.prompts.text.Message;

/** An announcement while it is being worked out; owned by the one who works it out. */
public final class Telling {

    private final List<Message> headline = new ArrayList<>();
    private final List<Message> numbers = new ArrayList<>();
    private final List<Message> reasons = new ArrayList<>();

    /** What is said at once. */
    public void headline(Message message) {
        headline.add(message);
    }

    /** What was worked out. */
    public void number(Message message) {
        numbers.add(message);
    }

    /** What else there is to know. */
    public void reason(Message message) {
        reasons.add(message);
    }

    /** What was told so far, as the announcement of this outcome. */
    public Announcement of(JobOutcome outcome) {
        return new Announcement(outcome, headline, numbers, reasons);
    }
}
