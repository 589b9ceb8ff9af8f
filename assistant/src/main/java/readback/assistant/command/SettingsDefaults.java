package readback.assistant.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.IDefaultValueProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import readback.assistant.selfcheck.CheckResult;
import readback.assistant.settings.Setting;
import readback.assistant.settings.SettingsException;
import readback.assistant.settings.SettingsFile;

/** Gives options the values of the settings file where the command line says nothing. */
public final class SettingsDefaults implements IDefaultValueProvider {

    /** Names the settings file on the command line. */
    static final String OPTION = "--settings";

    /** Options of a single run, which make no sense as settings. */
    private static final Set<String> PASSING =
            Set.of("audio", "typed", "json", "speak-to", "help", "version", "settings", "resume", "refrigerant");

    /** Commands that tell or find out what is wrong, so that wrong settings must not stop them. */
    private static final Set<String> UNSTOPPABLE = Set.of("help", "settings", "selfcheck", "setup");

    private static final Set<String> ASKING = Set.of("--help", "-h", "--version", "-V");

    private final SettingsFile file;
    private final @Nullable Path place;
    private final @Nullable String fault;

    private SettingsDefaults(SettingsFile file, @Nullable Path place, @Nullable String fault) {
        this.file = file;
        this.place = place;
        this.fault = fault;
    }

    /**
     * The defaults for these arguments: from the file that they name, else from the usual place when there is one.
     *
     * @param check the command whose options can be set
     * @throws SettingsException when the file has a mistake
     */
    public static SettingsDefaults of(List<String> arguments, CommandLine check) throws SettingsException {
        try {
            Optional<Path> named = named(arguments);
            Path file = named.orElseGet(SettingsDefaults::usualPlace);
            if (named.isEmpty() && !Files.exists(file)) {
                return new SettingsDefaults(SettingsFile.none(), null, null);
            }
            return new SettingsDefaults(read(file, check), file, null);
        } catch (InvalidPathException unwritable) {
            throw new SettingsException("The settings file cannot be looked for: " + named(unwritable), unwritable);
        }
    }

    /**
     * What a file says.
     *
     * @throws SettingsException when it has a mistake
     */
    static SettingsFile read(Path file, CommandLine check) throws SettingsException {
        return SettingsFile.read(file, settings(check)).passing((name, value) -> refused(check, name, value));
    }

    /** No defaults, because the file that has them is faulty. */
    public static SettingsDefaults faulty(SettingsException why) {
        return new SettingsDefaults(SettingsFile.none(), null, why.getMessage());
    }

    /** Whether these arguments ask for something that can be had without settings. */
    public static boolean dispensable(List<String> arguments) {
        return arguments.isEmpty()
                || UNSTOPPABLE.contains(arguments.get(0))
                || arguments.stream().anyMatch(ASKING::contains);
    }

    /** Why a path cannot be, for the user. */
    public static String named(InvalidPathException unwritable) {
        return "the name '" + unwritable.getInput()
                + "' has letters that the language setting of this system cannot write. Start Readback with its launcher,"
                + " or set LC_ALL to C.UTF-8.";
    }

    private static Optional<String> refused(CommandLine check, String name, String value) {
        try {
            // by way of the parent: the library parses no subcommand alone
            check.getParent().parseArgs(check.getCommandName(), "--" + name + "=" + value);
            return Optional.empty();
        } catch (CommandLine.ParameterException mistake) {
            return Optional.of(mistake.getMessage() + ".");
        }
    }

    /** What there is to say of the settings of this run. */
    CheckResult finding() {
        if (fault != null) {
            return new CheckResult(
                    "settings", CheckResult.Grade.BAD, fault, "Mend it, or take the file away; it was not used here.");
        }
        return new CheckResult(
                "settings",
                CheckResult.Grade.GOOD,
                place == null
                        ? "There is no settings file; every option has its own default."
                        : "'" + place + "' states " + file.size() + ".",
                "");
    }

    static Path usualPlace() {
        return SettingsFile.usualPlace(System.getenv(), System.getProperty("user.home", "."));
    }

    private static Optional<Path> named(List<String> arguments) {
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (argument.equals(OPTION) && i + 1 < arguments.size()) {
                return Optional.of(Path.of(arguments.get(i + 1)));
            }
            if (argument.startsWith(OPTION + "=")) {
                return Optional.of(Path.of(argument.substring(OPTION.length() + 1)));
            }
        }
        return Optional.empty();
    }

    /** What can be set, in the order of the command's options. */
    static List<Setting> settings(CommandLine check) {
        List<Setting> settings = new ArrayList<>();
        for (OptionSpec option : check.getCommandSpec().options()) {
            String name = name(option);
            if (!PASSING.contains(name)) {
                String example = option.arity().max() == 0 ? "true" : option.paramLabel();
                settings.add(new Setting(name, List.of(option.description()), example));
            }
        }
        return settings;
    }

    private static String name(OptionSpec option) {
        return option.longestName().replaceFirst("^--", "");
    }

    @Override
    public @Nullable String defaultValue(ArgSpec argument) {
        return argument instanceof OptionSpec option ? file.value(name(option)).orElse(null) : null;
    }
}
