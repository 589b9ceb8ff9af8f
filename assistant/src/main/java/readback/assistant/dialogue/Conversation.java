package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
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
 * @param questions our own, which come before the checklist goes on, the one being asked first
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
        List<Pending> questions,
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
        questions = List.copyOf(questions);
        said = List.copyOf(said);
    }

    static Conversation opened(boolean brief) {
        return new Conversation(
                Mode.LISTENING,
                brief,
                Optional.empty(),
                Map.of(),
                0,
                List.of(),
                Optional.empty(),
                List.of(),
                0,
                Optional.empty());
    }

    Conversation in(Mode next) {
        return new Conversation(next, brief, asked, asks, failures, questions, revisited, said, silences, talk);
    }

    Conversation speaking(boolean briefly) {
        return new Conversation(mode, briefly, asked, asks, failures, questions, revisited, said, silences, talk);
    }

    Conversation asking(String step) {
        Map<String, Integer> counted = new TreeMap<>(asks);
        counted.merge(step, 1, Integer::sum);
        return new Conversation(
                mode, brief, Optional.of(step), counted, failures, questions, revisited, said, silences, talk);
    }

    Conversation failedAgain() {
        return new Conversation(mode, brief, asked, asks, failures + 1, questions, revisited, said, silences, talk);
    }

    Conversation understood() {
        return new Conversation(mode, brief, asked, asks, 0, questions, revisited, said, silences, talk);
    }

    /** The question of our own that waits for an answer now. */
    public Optional<Pending> pending() {
        return questions.stream().findFirst();
    }

    Conversation questioning(List<? extends Pending> next) {
        return new Conversation(mode, brief, asked, asks, failures, List.copyOf(next), revisited, said, silences, talk);
    }

    /** This question comes first, the others after it. */
    Conversation questioningFirst(Pending question) {
        List<Pending> all = new ArrayList<>();
        all.add(question);
        all.addAll(questions);
        return questioning(all);
    }

    /** The question being asked is done with. */
    Conversation answered() {
        return questioning(questions.subList(Math.min(1, questions.size()), questions.size()));
    }

    Conversation revisiting(Optional<String> step) {
        return new Conversation(mode, brief, asked, asks, failures, questions, step, said, silences, talk);
    }

    Conversation having(List<Message> lastSaid) {
        return new Conversation(mode, brief, asked, asks, failures, questions, revisited, lastSaid, silences, talk);
    }

    /** Nothing was heard for long, once more. */
    Conversation silentAgain() {
        return new Conversation(mode, brief, asked, asks, failures, questions, revisited, said, silences + 1, talk);
    }

    /** Something was heard: talk that ended at this moment, or words meant for us. */
    Conversation spokenTo(Optional<Instant> talkEnded) {
        return new Conversation(mode, brief, asked, asks, failures, questions, revisited, said, 0, talkEnded);
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
