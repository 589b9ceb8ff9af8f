package readback.assistant.command;

import java.util.Optional;
import java.util.function.IntConsumer;
import readback.assistant.bench.Bench;
import readback.assistant.bench.Level;
import readback.assistant.bench.UnknownStepException;
import readback.calc.name.ConstantName;

/** Service calls at simulated units, as {@link MeasureCommand} is told to make them. */
record PlantCalls(Console console, int calls, Optional<Long> start, Optional<String> level, Optional<Integer> one) {

    private static final int MOST_CALLS = 100_000;

    /** Nobody waits longer than this without a sign of life. */
    private static final long QUIET_NANOSECONDS = 2_000_000_000L;

    void make() {
        if (calls < 1 || calls > MOST_CALLS) {
            throw new CommandFailure("--plant is a number of calls from 1 to " + MOST_CALLS + ", not " + calls + ".");
        }
        one.filter(number -> number < 1 || number > calls).ifPresent(number -> {
            throw new CommandFailure("--call is one of the calls of --plant, 1 to " + calls + ", not " + number + ".");
        });
        Level chosen = named();
        Desk desk = Desk.standard();
        Bench bench = new Bench(desk.dialogue(), start.orElse(1L), chosen);
        try {
            one.map(number -> bench.repeat(number, desk.wording()))
                    .orElseGet(() -> bench.measure(calls, progress()))
                    .forEach(console.out()::println);
        } catch (UnknownStepException e) {
            throw new CommandFailure(e);
        }
    }

    private Level named() {
        String name = level.orElse(ConstantName.of(Level.CHECKLIST));
        return ConstantName.find(Level.class, name)
                .orElseThrow(() -> new CommandFailure("--level is checklist or full, not '" + name + "'."));
    }

    private IntConsumer progress() {
        long[] told = {System.nanoTime()};
        return made -> {
            long now = System.nanoTime();
            if (now - told[0] > QUIET_NANOSECONDS) {
                told[0] = now;
                console.err().println(made + " of " + calls + " calls made");
            }
        };
    }
}
