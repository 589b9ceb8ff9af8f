package readback.assistant.measure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.dialogue.Understood;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.assistant.sound.Samples;
import readback.calc.quantity.Quantity;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;

/**
 * Whether a session stays as it is while nobody speaks to it: silence, a fan, talk of others go through ear, grammar
 * and dialogue as in a live session. Half of the time the session waits for a value, half for the answer to a first
 * question. One thread, that of the ear.
 */
public final class Idle {

    private static final Instant MORNING = Instant.parse("2026-07-14T09:00:00Z");
    /** What brings a new session to the question for a value. */
    private static final List<String> TO_A_VALUE = List.of("four ten a", "piston", "understood", "yes", "yes");

    /** A loud fan: the level of speech near the microphone, a tenth of full scale. */
    private static final double FAN_LEVEL = 0.1 * Short.MAX_VALUE;

    /** Rounds of talk are in turn clean and with a fan 20, 10 and 5 decibels below it. */
    private static final double[] ROUNDS = {Measurement.NO_NOISE, 20, 10, 5};

    private final Ear ear;
    private final Grammar grammar;
    private final Dialogue dialogue;

    public Idle(Ear ear, Grammar grammar, Dialogue dialogue) {
        this.ear = ear;
        this.grammar = grammar;
        this.dialogue = dialogue;
    }

    /**
     * What a stretch of sound did to the sessions.
     *
     * @param utterances in which a word was heard
     * @param answered asked again or asked about: the assistant spoke although nobody spoke to it
     * @param commands orders, choices and answers that were taken, in whatever way
     * @param values readings that came into the sheet or changed in it
     * @param taken the words of these orders and readings and what they were understood as
     */
    public record Counts(
            String sound, double minutes, int utterances, int answered, int commands, int values, List<String> taken) {
        public Counts {
            taken = List.copyOf(taken);
        }

        /** The counts, then what was taken, a line each. */
        public List<String> lines() {
            List<String> lines = new ArrayList<>();
            lines.add(line());
            taken.forEach(each -> lines.add("           " + each));
            return lines;
        }

        private String line() {
            return String.format(
                    Locale.ROOT,
                    "%-10s %5.1f min: %3d utterances heard, %d answered with a question, taken: %d commands (%.2f a"
                            + " minute), %d values",
                    sound,
                    minutes,
                    utterances,
                    answered,
                    commands,
                    commands / minutes,
                    values);
        }
    }

    /** The given number of minutes of silence, as a good microphone gives it: nothing at all. */
    public Counts silence(double minutes) {
        return listened("silence", Samples.silence(60 * minutes, Ear.RATE));
    }

    /** So many minutes beside a fan. */
    public Counts fan(double minutes) {
        return listened("fan", Noise.FAN.alone(60 * minutes, FAN_LEVEL, 7));
    }

    /**
     * The given number of minutes of the talk, repeated with another fan level each time; nothing if there is no talk.
     */
    public Optional<Counts> talk(List<Samples> talk, double minutes) {
        if (talk.stream().mapToDouble(Samples::seconds).sum() == 0) {
            return Optional.empty();
        }
        List<Samples> parts = new ArrayList<>();
        double seconds = 0;
        for (int round = 0; seconds < 60 * minutes; round++) {
            double level = ROUNDS[round % ROUNDS.length];
            for (Samples each : talk) {
                if (seconds < 60 * minutes) {
                    parts.add(level == Measurement.NO_NOISE ? each : Noise.FAN.mixed(each, level, round));
                    seconds += each.seconds();
                }
            }
        }
        return Optional.of(listened("talk", Samples.joined(parts, Ear.RATE)));
    }

    private Counts listened(String name, Samples sound) {
        int half = sound.length() / 2;
        Counts value = session(name, Samples.of(sound.slice(0, half), Ear.RATE), TO_A_VALUE);
        Counts question = session(name, Samples.of(sound.slice(half, sound.length()), Ear.RATE), List.of());
        return new Counts(
                name,
                sound.seconds() / 60,
                value.utterances() + question.utterances(),
                value.answered() + question.answered(),
                value.commands() + question.commands(),
                value.values() + question.values(),
                Stream.concat(value.taken().stream(), question.taken().stream()).toList());
    }

    private Counts session(String name, Samples sound, List<String> introduction) {
        State state = dialogue.begin(new Event.Started(MORNING, SessionSettings.STANDARD))
                .state();
        for (String line : introduction) {
            state = heard(state, 0, Event.Source.KEYS, List.of(Hypothesis.typed(line)))
                    .state();
        }
        int utterances = 0;
        int answered = 0;
        int commands = 0;
        int values = 0;
        List<String> taken = new ArrayList<>();
        AudioFileFeed feed = new AudioFileFeed(ear, sound);
        while (!feed.ended() && !state.closed()) {
            Optional<Utterance> utterance = feed.next(grammar.vocabulary(dialogue.expectation(state)));
            if (utterance.isPresent()) {
                Turn turn = heard(
                        state,
                        utterance.get().endSeconds(),
                        Event.Source.VOICE,
                        utterance.get().alternatives());
                utterances += utterance.get().onlyUnknown() ? 0 : 1;
                Understood understood = turn.outcome().understood();
                boolean asked = understood.doubtful();
                State before = state;
                boolean changed = Arrays.stream(Quantity.values())
                        .anyMatch(quantity -> !before.sheet()
                                .reading(quantity)
                                .equals(turn.state().sheet().reading(quantity)));
                boolean ignored = understood.ignored();
                answered += asked ? 1 : 0;
                values += changed ? 1 : 0;
                commands += asked || changed || ignored ? 0 : 1;
                if (changed || !(asked || ignored)) {
                    Hypothesis best = utterance.get().alternatives().get(0);
                    taken.add(String.format(
                            Locale.ROOT, "\"%s\" (%.2f): %s", best.words(), best.confidence(), understood.line()));
                }
                state = turn.state();
            }
        }
        return new Counts(name, sound.seconds() / 60, utterances, answered, commands, values, taken);
    }

    private Turn heard(State state, double seconds, Event.Source source, List<Hypothesis> hypotheses) {
        return dialogue.on(state, new Event.Heard(MORNING.plusMillis(Math.round(seconds * 1000)), source, hypotheses));
    }
}
