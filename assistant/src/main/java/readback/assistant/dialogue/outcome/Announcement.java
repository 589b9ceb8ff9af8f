package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.prompts.text.Message;

/**
 * What a job came to, and how it is told.
 *
 * @param messages the outcome for the technician, value first
 * @param news what is left to say when the outcome is of the same kind as before, but not by the same numbers
 */
public record Announcement(JobOutcome outcome, List<Message> messages, List<Message> news) {
    public Announcement {
        messages = List.copyOf(messages);
        news = List.copyOf(news);
    }

    public Announcement(JobOutcome outcome, List<Message> messages) {
        this(outcome, messages, messages);
    }
}
