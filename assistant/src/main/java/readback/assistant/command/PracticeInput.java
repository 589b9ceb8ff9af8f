package readback.assistant.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.assistant.session.Alarm;
import readback.assistant.session.PlainLines;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.grammar.Hypothesis;

/**
 * A practice call in lines: before each answer what is to be seen at the unit, then one utterance from standard input.
 * What is waited for is over at once, and an empty line lets five minutes pass.
 */
record PracticeInput(Console console, SteadyClock clock, PracticeCall call) implements InputCourse.Input {

    private static final String UNIT = "screen.plain.unit";

    /** What an empty line lets pass. */
    private static final Duration A_WHILE = Duration.ofMinutes(5);

    @Override
    public void feed(Session session, Alarm alarm, PlainLines lines, Instant start) {
        List<String> seen = new ArrayList<>();
        try {
            while (!session.closed()) {
                show(session, lines, seen);
                lines.prompt();
                String line = console.in().readLine();
                if (line == null) {
                    return;
                }
                lines.entered();
                if (line.isBlank()) {
                    call.time().leap(A_WHILE);
                }
                alarm.ring(session, clock.instant());
                if (!line.isBlank()) {
                    session.on(new Event.Heard(
                            clock.instant(), Event.Source.KEYS, List.of(Hypothesis.typed(line.strip()))));
                }
                waitOut(session, alarm);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("standard input could not be read", e);
        }
    }

    /** What has not been told since the question changed. */
    private void show(Session session, PlainLines lines, List<String> seen) {
        List<String> now = call.outlook().lines(session.expectation());
        now.stream().filter(line -> !seen.contains(line)).forEach(line -> lines.line(UNIT, line));
        seen.clear();
        seen.addAll(now);
    }

    private void waitOut(Session session, Alarm alarm) {
        Optional<Duration> left = call.world().nextBell();
        while (left.isPresent() && !session.closed()) {
            call.time().leap(left.get());
            alarm.ring(session, clock.instant());
            left = call.world().nextBell();
        }
    }
}
