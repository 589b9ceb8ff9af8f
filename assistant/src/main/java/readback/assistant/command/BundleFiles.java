package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import readback.assistant.archive.SessionPacker;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Visible;

/** What {@code sessions --pack} does: records go into bundles for an engine that reads many at once. */
final class BundleFiles {

    private final Console console;
    private final Path out;
    private final int per;

    /** @throws CommandFailure for a place or a number that will not do */
    BundleFiles(Console console, Path out, int per) {
        this.console = console;
        this.out = out;
        this.per = per;
        if (per < 1) {
            throw new CommandFailure("--per is the number of sessions in a bundle, 1 or more, not " + per + ".");
        }
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new CommandFailure("'" + out + "' is a file: --pack takes a folder.");
        }
        for (Path folder = out.toAbsolutePath().normalize(); folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve(SessionRecord.FILE))) {
                throw new CommandFailure("'" + out + "' belongs to a recorded session: name a folder elsewhere.");
            }
        }
    }

    /** Packs every record of the folders; tells how many, and which could not be packed. */
    int pack(List<Path> folders) {
        try {
            SessionPacker.Packed packed = new SessionPacker(out, per)
                    .pack(folders, looked -> console.err().println(looked + " records looked at ..."));
            packed.troubles().forEach(each -> console.complain(Visible.text(each)));
            console.out()
                    .println("Packed: " + packed.sessions() + " sessions in " + packed.bundles() + " new bundles in "
                            + out + "; " + packed.before() + " were there before.");
            return packed.troubles().isEmpty() ? 0 : 1;
        } catch (IOException e) {
            throw new CommandFailure("'" + out + "' cannot be written (" + e.getMessage()
                    + "): name a folder that you may write to, with room for the records.");
        }
    }
}
