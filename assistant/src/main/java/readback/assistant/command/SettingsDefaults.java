package readback.assistant.command;

import java.nio.file.Files;
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

    private final SettingsFile file;

    private SettingsDefaults(SettingsFile file) {
        this.file = file;
    }

    /**
     * The defaults for these arguments: from the file that they name, else from the usual place when there is one.
     *
     * @param check the command whose options can be set
     * @throws SettingsException when the file has a mistake
     */
    public static SettingsDefaults of(List<String> arguments, CommandLine check) throws SettingsException {
        Optional<Path> named = named(arguments);
        Path file = named.orElseGet(SettingsDefaults::usualPlace);
        if (named.isEmpty() && !Files.exists(file)) {
            return new SettingsDefaults(SettingsFile.none());
        }
        return new SettingsDefaults(SettingsFile.read(file, settings(check)));
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
