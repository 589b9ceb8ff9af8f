package readback.assistant.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.State;
import readback.assistant.probe.ProbeFeed;
import readback.assistant.session.Alarm;
import readback.assistant.session.PlainLines;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.grammar.Hypothesis;

/** One utterance a line from standard input. */
record TypedInput(Desk desk, Console console, SteadyClock clock, ProbeFeed probes) implements InputCourse.Input {

    /** An invented call that a typed session answers to itself before the first line; decision 0015. */
    private static final List<String> REHEARSED = List.of(
            "four ten a",
            "piston",
            "understood",
            "yes",
            "outdoor ninety five, wet bulb sixty seven",
            "suction one eighteen",
            "suction line fifty two",
            "correction, sixty two");

    @Override
    public void feed(Session session, Alarm alarm, PlainLines lines, Instant start) {
        warmUp();
        try {
            String line = next(lines);
            while (line != null && !session.closed()) {
                clock.changed().ifPresent(by -> session.on(new Event.ClockChanged(clock.instant(), by)));
                alarm.ring(session, clock.instant());
                probes.poll(
                                clock.instant(),
                                session.assessment().air(),
                                session.state().settings().units())
                        .ifPresent(session::on);
                if (!line.isBlank()) {
                    session.on(new Event.Heard(
                            clock.instant(), Event.Source.KEYS, List.of(Hypothesis.typed(line.strip()))));
                }
                line = session.closed() ? null : next(lines);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("standard input could not be read", e);
        }
    }

    private @Nullable String next(PlainLines lines) throws IOException {
        lines.prompt();
        String line = console.in().readLine();
        if (line != null) {
            lines.entered();
        }
        return line;
    }

    /** The first answer would pay for loading everything that takes part; the dialogue is pure, so it can rehearse. */
    private void warmUp() {
        State state = desk.dialogue()
                .begin(new Event.Started(Instant.EPOCH, SessionSettings.STANDARD))
                .state();
        for (String words : REHEARSED) {
            Event.Heard heard = new Event.Heard(Instant.EPOCH, Event.Source.KEYS, List.of(Hypothesis.typed(words)));
            state = desk.dialogue().on(state, heard).state();
        }
    }
}
