package readback.assistant.command;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import readback.assistant.session.Build;

/**
 * What the program does when no subcommand is given: the first run, in a terminal of a tablet that is not set up; else
 * it says what it is for and what to try first.
 */
@Command(
        name = "readback",
        mixinStandardHelpOptions = true,
        versionProvider = Overview.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Listens to a technician at the gauges, reads every value back, leads through the charge check that fits the"
                    + " metering device, and says target, verdict and cautions.",
            ""
        },
        footer = {
            "",
            "Try first:",
            "  readback setup                       microphone, loudspeaker and settings, step by step",
            "  readback demo                        a recorded service call, from the first word to the verdict",
            "  readback check --typed               type what you would say, a line each",
            "  readback check --audio call.wav      listen to a recording",
            "  readback saturation --refrigerant R-410A --gauge 118",
            "  readback help check                  what a command takes",
            "",
            "Readback advises; the maker's instructions, local codes and licensed practice decide."
        })
public final class Overview implements Callable<Integer> {

    /** What {@code readback --version} prints. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Readback " + Build.ofThisProgram().name()};
        }
    }

    private final Console console;
    private final FirstRun.Program program;

    @Spec
    private @Nullable CommandSpec spec;

    public Overview(Console console, FirstRun.Program program) {
        this.console = console;
        this.program = program;
    }

    @Override
    public Integer call() {
        if (spec == null) {
            throw new IllegalStateException("the command was not set up");
        }
        FirstRun first = FirstRun.of(console, program, spec);
        if (first.due() && console.columns().get().isPresent()) {
            return first.run(false, false);
        }
        console.out().println(spec.commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF));
        return 0;
    }
}
