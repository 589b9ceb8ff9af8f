package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import readback.grammar.Expectation;
import readback.prompts.text.Message;

/** What the dialogue wants done. The order in the list is the order of doing. */
public sealed interface Effect {

    /** Has the performer do what is wanted. */
    void performedBy(Performer performer);

    /** Does what is wanted, in its own way for each kind of effect. */
    interface Performer {

        void say(Say say);

        void hush(Hush hush);

        void listen(Listen listen);

        void startTimer(StartTimer startTimer);

        void stopTimer(StopTimer stopTimer);

        void close(Close close);
    }

    /** Speak and show these, one after the other. */
    record Say(List<Message> messages) implements Effect {
        public Say {
            messages = List.copyOf(messages);
        }

        @Override
        public void performedBy(Performer performer) {
            performer.say(this);
        }
    }

    /** Stop speaking at once. */
    record Hush() implements Effect {
        @Override
        public void performedBy(Performer performer) {
            performer.hush(this);
        }
    }

    /**
     * Listen with the vocabulary of this situation.
     *
     * @param noInputTimeout for live speech: send {@link Event.TimerElapsed} of {@link Event#SILENCE} when nothing
     *     happened for so long; empty when silence is as good as words
     */
    record Listen(Expectation expectation, Optional<Duration> noInputTimeout) implements Effect {
        @Override
        public void performedBy(Performer performer) {
            performer.listen(this);
        }
    }

    /** Send {@link Event.TimerElapsed} after the duration; an earlier timer of the same name is replaced. */
    record StartTimer(String timer, Duration duration) implements Effect {
        @Override
        public void performedBy(Performer performer) {
            performer.startTimer(this);
        }
    }

    /** Forget the timer. */
    record StopTimer(String timer) implements Effect {
        @Override
        public void performedBy(Performer performer) {
            performer.stopTimer(this);
        }
    }

    /** The session is over; nothing is listened to any more. */
    record Close() implements Effect {
        @Override
        public void performedBy(Performer performer) {
            performer.close(this);
        }
    }
}
