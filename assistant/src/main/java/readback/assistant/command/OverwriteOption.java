package readback.assistant.command;

import picocli.CommandLine.Option;

/** Whether a file that is there already may be written over. */
final class OverwriteOption {

    @Option(
            names = "--force",
            description = "Write over a file that is there already. Files of a session are never written over.")
    private boolean force;

    boolean force() {
        return force;
    }
}
