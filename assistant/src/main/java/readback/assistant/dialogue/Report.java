package readback.assistant.dialogue;

import java.util.List;
import readback.prompts.text.Message;

/**
 * What came of a measurement.
 *
 * @param recorded the outcome with the numbers that led to it, in the one form that is recorded and compared on replay
 * @param messages the outcome for the technician, value first
 * @param news what is left to say when the outcome is of the same kind as before
 */
record Report(String recorded, List<Message> messages, List<Message> news) {
    Report {
        messages = List.copyOf(messages);
        news = List.copyOf(news);
    }

    Report(String recorded, List<Message> messages) {
        this(recorded, messages, messages);
    }

    /** The outcome in one word. */
    static String kindOf(String recorded) {
        return recorded.substring(0, (recorded + " ").indexOf(' '));
    }
}
