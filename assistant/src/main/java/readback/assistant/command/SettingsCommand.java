package readback.assistant.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import readback.assistant.settings.SettingsFile;

/** Shows what can be set, as a file that can be filled in. */
@Command(
        name = "settings",
        mixinStandardHelpOptions = true,
        description = "Prints a settings file that explains every setting and sets none.")
public final class SettingsCommand implements Callable<Integer> {

    private final Console console;

    @Option(names = "--write", description = "Write it where Readback looks for it, unless there is one already.")
    private boolean write;

    @Spec
    private @Nullable CommandSpec spec;

    public SettingsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        String template = SettingsFile.template(SettingsDefaults.settings(check()));
        if (write) {
            write(template, SettingsDefaults.usualPlace());
        } else {
            console.out().print(template);
        }
        return 0;
    }

    private CommandLine check() {
        if (spec == null || spec.parent() == null) {
            throw new IllegalStateException("the command belongs to a parent");
        }
        return Objects.requireNonNull(spec.parent().subcommands().get("check"));
    }

    private void write(String template, Path file) {
        try {
            Path folder = file.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(file, template, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            console.out().println("Written: " + file);
        } catch (FileAlreadyExistsException e) {
            throw new CommandFailure("There is a settings file '" + file + "' already; it was left as it is.");
        } catch (IOException e) {
            throw new CommandFailure("The settings file '" + file + "' cannot be written: " + e.getMessage() + ".");
        }
    }
}
