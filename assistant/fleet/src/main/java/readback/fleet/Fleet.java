package readback.fleet;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import readback.assistant.session.Build;

/** The fleet's command line. Exit codes: 0 done, 1 something was found or it could not go on, 2 not understood. */
@Command(
        name = "readback-fleet",
        mixinStandardHelpOptions = true,
        versionProvider = Fleet.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Verifies the records of many tablets, makes tables of them, and answers what a head of service asks.",
            "Bundles of records are made by 'readback sessions DIR --pack FOLDER'."
        },
        footer = {
            "",
            "Readback advises; the maker's instructions, local codes and licensed practice decide. What it tells of a"
                    + " person's work is a reason to look at the record, not a judgement."
        })
public final class Fleet {

    /** What {@code readback-fleet --version} prints. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Readback " + Build.ofThisProgram().name()};
        }
    }

    private Fleet() {}

    /** Runs one subcommand and ends the process with its exit code. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs one subcommand and gives its exit code. */
    static int run(PrintStream out, PrintStream err, String... args) {
        CommandLine line = new CommandLine(new Fleet())
                .addSubcommand(new VerifyCommand(out, err))
                .addSubcommand(new TablesCommand(out, err))
                .addSubcommand(new ServiceReportCommand(out, err, Clock.systemUTC()))
                .addSubcommand(new CommandLine.HelpCommand());
        line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setUsageHelpAutoWidth(false).setUsageHelpWidth(100);
        line.setParameterExceptionHandler((mistake, arguments) -> {
            err.println("readback-fleet: " + mistake.getMessage());
            err.println("Try: readback-fleet help " + mistake.getCommandLine().getCommandName());
            return CommandLine.ExitCode.USAGE;
        });
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            err.println("readback-fleet: "
                    + (failure instanceof FleetFailure
                            ? failure.getMessage()
                            : "an unexpected fault stopped this command (" + firstLine(failure)
                                    + "); bundles are never changed, and tables that were there stay."));
            return CommandLine.ExitCode.SOFTWARE;
        });
        return line.execute(args);
    }

    /** The engine puts its whole trace into messages. */
    private static String firstLine(Throwable failure) {
        return failure.toString().lines().findFirst().orElse("");
    }
}
