package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import readback.grammar.Grammar;
import readback.prompts.text.Message;

/**
 * Where the talk stands. Immutable.
 *
 * @param mode whether words are acted on
 * @param brief values and verdicts only
 * @param asked step asked last
 * @param asks how often each step was asked, for shorter or fuller prompts
 * @param failures utterances in a row that could not be used
 * @param pending a question of our own that comes first
 * @param revisited a step that is asked again although it is filled
 * @param said what was said last, for "say again"
 * @param silences how often nothing was heard for long since the last words
 * @param talk when talk was heard that was not meant for us, if that was the last thing heard
 */
public record Conversation(
        Mode mode,
        boolean brief,
        Optional<String> asked,
        Map<String, Integer> asks,
        int failures,
        Optional<Pending> pending,
        Optional<String> revisited,
        List<Message> said,
        int silences,
        Optional<Instant> talk) {

    /** Whether words are acted on. */
    enum Mode {
        LISTENING,
        /** "Hold on" was said; only "carry on" ends it. */
        HELD,
        CLOSED
    }

    public Conversation {
        asks = Map.copyOf(asks);
        said = List.copyOf(said);
    }

    static Conversation opened(boolean brief) {
        return new Conversation(
                Mode.LISTENING,
                brief,
                Optional.empty(),
                Map.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                0,
                Optional.empty());
    }

    Conversation in(Mode next) {
        return new Conversation(next, brief, asked, asks, failures, pending, revisited, said, silences, talk);
    }

    Conversation speaking(boolean briefly) {
        return new Conversation(mode, briefly, asked, asks, failures, pending, revisited, said, silences, talk);
    }

    Conversation asking(String step) {
        Map<String, Integer> counted = new TreeMap<>(asks);
        counted.merge(step, 1, Integer::sum);
        return new Conversation(
                mode, brief, Optional.of(step), counted, failures, pending, revisited, said, silences, talk);
    }

    Conversation failedAgain() {
        return new Conversation(mode, brief, asked, asks, failures + 1, pending, revisited, said, silences, talk);
    }

    Conversation understood() {
        return new Conversation(mode, brief, asked, asks, 0, pending, revisited, said, silences, talk);
    }

    Conversation with(Optional<Pending> question) {
        return new Conversation(mode, brief, asked, asks, failures, question, revisited, said, silences, talk);
    }

    Conversation revisiting(Optional<String> step) {
        return new Conversation(mode, brief, asked, asks, failures, pending, step, said, silences, talk);
    }

    Conversation having(List<Message> lastSaid) {
        return new Conversation(mode, brief, asked, asks, failures, pending, revisited, lastSaid, silences, talk);
    }

    /** Nothing was heard for long, once more. */
    Conversation silentAgain() {
        return new Conversation(mode, brief, asked, asks, failures, pending, revisited, said, silences + 1, talk);
    }

    /** Something was heard: talk that ended at this moment, or words meant for us. */
    Conversation spokenTo(Optional<Instant> talkEnded) {
        return new Conversation(mode, brief, asked, asks, failures, pending, revisited, said, 0, talkEnded);
    }

    /**
     * Seconds of quiet between talk that was not meant for us and the first of these words; without end if there was
     * none.
     */
    double secondsSinceTalk(Event.Heard heard) {
        return talk.map(ended -> Duration.between(ended, heard.at()).toMillis() * 1e-3 - heard.seconds())
                .orElse(Grammar.NO_TALK);
    }

    int asksOf(String step) {
        return asks.getOrDefault(step, 0);
    }
}
