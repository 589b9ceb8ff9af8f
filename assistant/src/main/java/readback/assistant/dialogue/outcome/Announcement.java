package readback.assistant.dialogue.outcome;

import java.util.List;
import java.util.stream.Stream;
import readback.prompts.text.Message;

/**
 * What a job came to, and how it is told: in a breath aloud, everything to the eye.
 *
 * @param headline what it came to, first; then what is suspected and what to do, each only where there is something
 * @param numbers what was worked out, with its uncertainty, and what it was held against; spoken on request
 * @param reasons what leaves it open and what else there is to know; spoken on request
 */
public record Announcement(JobOutcome outcome, List<Message> headline, List<Message> numbers, List<Message> reasons) {
    public Announcement {
        headline = List.copyOf(headline);
        numbers = List.copyOf(numbers);
        reasons = List.copyOf(reasons);
    }

    public Announcement(JobOutcome outcome, List<Message> headline, List<Message> numbers) {
        this(outcome, headline, numbers, List.of());
    }

    public Announcement(JobOutcome outcome, Message headline) {
        this(outcome, List.of(headline), List.of());
    }

    /** All of it, the headline aloud. */
    public List<Message> messages() {
        return Stream.concat(
                        headline.stream(),
                        Stream.concat(numbers.stream(), reasons.stream()).map(Message::quietly))
                .toList();
    }

    /**
     * All of it where the outcome is of the same kind as before, but not by the same numbers: aloud only what is done
     * otherwise now.
     *
     * @param before the headline as it was
     */
    public List<Message> news(List<Message> before) {
        return messages().stream()
                .map(message ->
                        message.equals(headline.get(0)) || before.contains(message) ? message.quietly() : message)
                .toList();
    }

    /** Whether the message is one of these, said or shown. */
    public boolean tells(Message message) {
        return messages().stream().map(Message::outLoud).anyMatch(message.outLoud()::equals);
    }
}
