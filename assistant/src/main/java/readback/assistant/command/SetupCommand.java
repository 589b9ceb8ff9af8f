package readback.assistant.command;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Sets this tablet up, step by step. */
@Command(
        name = "setup",
        mixinStandardHelpOptions = true,
        description = {
            "Sets this tablet up: microphone, loudspeaker, noise, units, altitude and instruments, step by step.",
            "Microphone and loudspeaker are tested, and whether orders can be heard while Readback speaks; then the"
                    + " settings file is written. Every step can be skipped, and leads back. By touch and keys, and by voice once a microphone is chosen.",
            ""
        })
public final class SetupCommand implements Callable<Integer> {

    private final Console console;
    private final FirstRun.Program program;

    @Option(names = "--plain", description = "Ask in plain lines in place of the screen.")
    private boolean plain;

    @Spec
    private @Nullable CommandSpec spec;

    public SetupCommand(Console console, FirstRun.Program program) {
        this.console = console;
        this.program = program;
    }

    @Override
    public Integer call() {
        if (spec == null || spec.parent() == null) {
            throw new IllegalStateException("the command belongs to a parent");
        }
        return FirstRun.of(console, program, spec.parent()).run(true, plain);
    }
}
