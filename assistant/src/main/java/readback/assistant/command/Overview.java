package readback.assistant.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import readback.assistant.session.Build;

/** What the program says when no subcommand is given: what it is for and what to try first. */
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
            "  readback demo                        a recorded service call, from the first word to the verdict",
            "  readback check --typed               type what you would say, a line each",
            "  readback check --audio call.wav      listen to a recording",
            "  readback saturation --refrigerant R-410A --gauge 118",
            "  readback help check                  what a command takes",
            "",
            "Readback advises; the maker's instructions, local codes and licensed practice decide."
        })
public final class Overview implements Runnable {

    /** What {@code readback --version} prints. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Readback " + Build.ofThisProgram().name()};
        }
    }

    private final Console console;

    @Spec
    private @Nullable CommandSpec spec;

    public Overview(Console console) {
        this.console = console;
    }

    @Override
    public void run() {
        if (spec != null) {
            console.out().println(spec.commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF));
        }
    }
}
