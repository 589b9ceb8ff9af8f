package readback.assistant;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import picocli.CommandLine;
import readback.assistant.command.AirCommand;
import readback.assistant.command.CheckCommand;
import readback.assistant.command.CommandFailure;
import readback.assistant.command.Console;
import readback.assistant.command.DemoCommand;
import readback.assistant.command.DrillCommand;
import readback.assistant.command.HearCommand;
import readback.assistant.command.HistoryCommand;
import readback.assistant.command.MeasureCommand;
import readback.assistant.command.Overview;
import readback.assistant.command.PracticeCommand;
import readback.assistant.command.RemarkCommand;
import readback.assistant.command.ReplayCommand;
import readback.assistant.command.ReportCommand;
import readback.assistant.command.SaturationCommand;
import readback.assistant.command.SelfcheckCommand;
import readback.assistant.command.SessionsCommand;
import readback.assistant.command.SettingsCommand;
import readback.assistant.command.SettingsDefaults;
import readback.assistant.command.SetupCommand;
import readback.assistant.command.TableCommand;
import readback.assistant.command.UnderstandCommand;
import readback.assistant.command.VocabularyCommand;
import readback.assistant.settings.SettingsException;

/** The command line's entry. Exit codes: 0 done, 1 could not go on, 2 not understood. */
public final class Readback {

    /** Tells of wrong settings among its findings. */
    private static final String SELFCHECK = "selfcheck";

    private Readback() {}

    /** Runs one subcommand and ends the process with its exit code. */
    public static void main(String[] args) {
        Console console = Console.ofProcess();
        int code = run(console, args);
        // The library of the echo canceller writes of its threads to the output while the process ends.
        console.out().close();
        System.exit(code);
    }

    /** Runs one subcommand and gives its exit code. */
    public static int run(Console console, String... args) {
        CommandLine line = new CommandLine(new Overview(console, other -> run(console, other)))
                .addSubcommand(new CheckCommand(console))
                .addSubcommand(new DemoCommand(console))
                .addSubcommand(new PracticeCommand(console))
                .addSubcommand(new DrillCommand(console, Clock.system(ZoneId.systemDefault())))
                .addSubcommand(new HearCommand(console))
                .addSubcommand(new UnderstandCommand(console))
                .addSubcommand(new SaturationCommand(console))
                .addSubcommand(new TableCommand(console))
                .addSubcommand(new AirCommand(console))
                .addSubcommand(new VocabularyCommand(console))
                .addSubcommand(new MeasureCommand(console))
                .addSubcommand(new ReplayCommand(console))
                .addSubcommand(new ReportCommand(console))
                .addSubcommand(new RemarkCommand(console))
                .addSubcommand(new SessionsCommand(console))
                .addSubcommand(new HistoryCommand(console))
                .addSubcommand(new SelfcheckCommand(console))
                .addSubcommand(new SettingsCommand(console))
                .addSubcommand(new SetupCommand(console, other -> run(console, other)))
                .addSubcommand(new CommandLine.HelpCommand());
        line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
        line.setUsageHelpAutoWidth(false).setUsageHelpWidth(100);
        line.setParameterExceptionHandler((mistake, arguments) -> {
            CommandLine command = mistake.getCommandLine();
            console.err().println("readback: " + CommandFailure.readable(String.valueOf(mistake.getMessage())));
            CommandLine.UnmatchedArgumentException.printSuggestions(mistake, command.getErr());
            console.err().println("Try: readback help " + helpTopic(command));
            return CommandLine.ExitCode.USAGE;
        });
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            if (failure instanceof CommandFailure) {
                console.err().println("readback: " + failure.getMessage());
            } else if (failure instanceof InvalidPathException unwritable) {
                console.err().println("readback: " + SettingsDefaults.named(unwritable));
            } else {
                console.err()
                        .println("readback: an unexpected fault stopped this command (" + failure
                                + "); what was recorded before is kept.");
            }
            return CommandLine.ExitCode.SOFTWARE;
        });
        List<String> arguments = List.of(args);
        try {
            line.setDefaultValueProvider(SettingsDefaults.of(
                    arguments, Objects.requireNonNull(line.getSubcommands().get("check"))));
        } catch (SettingsException e) {
            if (!arguments.contains(SELFCHECK)) {
                console.err().println("readback: " + e.getMessage());
            }
            if (!SettingsDefaults.dispensable(arguments)) {
                return CommandLine.ExitCode.USAGE;
            }
            line.setDefaultValueProvider(SettingsDefaults.faulty(e));
        }
        return line.execute(args);
    }

    private static String helpTopic(CommandLine command) {
        return command.getParent() == null ? "" : command.getCommandName();
    }
}
