package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import readback.grammar.Expectation;
import readback.prompts.text.Message;

/** What the dialogue wants done. The order in the list is the order of doing. */
public sealed interface Effect {

    /** Speak and show these, one after the other. */
    record Say(List<Message> messages) implements Effect {
        public Say {
            messages = List.copyOf(messages);
        }
    }

    /** Stop speaking at once. */
    record Hush() implements Effect {}

    /**
     * Listen with the vocabulary of this situation.
     *
     * @param noInputTimeout for live speech: send {@link Event.TimerElapsed} of {@link Event#SILENCE} when nothing
     *     happened for so long; empty when silence is as good as words
     */
    record Listen(Expectation expectation, Optional<Duration> noInputTimeout) implements Effect {}

    /** Send {@link Event.TimerElapsed} after the duration; an earlier timer of the same name is replaced. */
    record StartTimer(String timer, Duration duration) implements Effect {}

    /** Forget the timer. */
    record StopTimer(String timer) implements Effect {}

    /** The session is over; nothing is listened to any more. */
    record Close() implements Effect {}
}
