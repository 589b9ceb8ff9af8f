package readback.assistant.dialogue;

import java.util.List;
import readback.prompts.text.Message;

/**
 * What came of a measurement.
 *
 * @param recorded the outcome with the numbers that led to it, in the one form that is recorded and compared on replay
 * @param messages the outcome for the technician, value first
 */
record Report(String recorded, List<Message> messages) {
    Report {
        messages = List.copyOf(messages);
    }
}
