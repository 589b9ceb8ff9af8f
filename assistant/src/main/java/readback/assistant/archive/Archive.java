package readback.assistant.archive;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;

/** A folder with a session in each of its folders. */
public final class Archive {

    /** How the names of the files begin that are kept beside the sessions to list them sooner. */
    public static final String INDEX = SummaryIndex.FILE;

    private final Path folder;
    private final boolean readEverything;

    private Archive(Path folder, boolean readEverything) {
        this.folder = folder;
        this.readEverything = readEverything;
    }

    /** The sessions of a folder; records that did not change since they were last listed are not read again. */
    public static Archive in(Path folder) {
        return new Archive(folder, false);
    }

    /** The same sessions, with every record read and its chain checked. */
    public Archive checked() {
        return new Archive(folder, true);
    }

    /**
     * What listing came across.
     *
     * @param sessions summaries given
     * @param unreadable folders whose record has no readable header, with the reason
     */
    public record Listing(int sessions, List<String> unreadable) {
        public Listing {
            unreadable = List.copyOf(unreadable);
        }
    }

    /**
     * Gives every session to the taker, sorted by the name of its folder, that is by time.
     *
     * @throws IOException when the folder cannot be listed
     */
    public Listing each(Consumer<Summary> taker) throws IOException {
        List<String> names = names();
        List<String> unreadable = new ArrayList<>();
        int sessions = 0;
        try (SummaryIndex index = SummaryIndex.in(folder)) {
            for (String name : names) {
                Optional<BasicFileAttributes> attributes = attributes(name);
                if (attributes.isEmpty()) {
                    continue;
                }
                Optional<Summary> known = index.find(name, attributes.get());
                if (known.isPresent() && !readEverything) {
                    taker.accept(known.get());
                    sessions++;
                    continue;
                }
                try {
                    Summary summary = Summary.of(RecordedSession.read(folder.resolve(name)));
                    if (known.isEmpty()) {
                        index.keep(name, attributes.get(), summary);
                    }
                    taker.accept(summary);
                    sessions++;
                } catch (RecordUnavailableException e) {
                    unreadable.add(name + ": " + e.getMessage());
                }
            }
        }
        return new Listing(sessions, unreadable);
    }

    /**
     * The folders that hold a record, sorted by their name, that is by time.
     *
     * @throws IOException when the folder cannot be listed
     */
    public List<Path> folders() throws IOException {
        return names().stream()
                .map(folder::resolve)
                .filter(each -> Files.exists(each.resolve(SessionRecord.FILE)))
                .toList();
    }

    private List<String> names() throws IOException {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(folder)) {
            for (Path each : folders) {
                Path name = each.getFileName();
                if (name != null && !name.toString().startsWith(SummaryIndex.FILE)) {
                    names.add(name.toString());
                }
            }
        }
        names.sort(null);
        return names;
    }

    private Optional<BasicFileAttributes> attributes(String name) {
        try {
            return Optional.of(
                    Files.readAttributes(folder.resolve(name).resolve(SessionRecord.FILE), BasicFileAttributes.class));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
