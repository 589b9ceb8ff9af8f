package readback.assistant.archive;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;

/** A folder with a session in each of its folders. */
public final class Archive {

    /** How the names of the files begin that are kept beside the sessions to list them sooner. */
    public static final String INDEX = SummaryIndex.FILE;

    private final Path folder;
    private final Optional<Consumer<RecordedSession>> examiner;

    private Archive(Path folder, Optional<Consumer<RecordedSession>> examiner) {
        this.folder = folder;
        this.examiner = examiner;
    }

    /** The sessions of a folder; records that did not change since they were last listed are not read again. */
    public static Archive in(Path folder) {
        return new Archive(folder, Optional.empty());
    }

    /**
     * The same sessions, with every record read and its chain checked.
     *
     * @param further gets each record that could be read
     */
    public Archive checked(Consumer<RecordedSession> further) {
        return new Archive(folder, Optional.of(further));
    }

    /**
     * What listing came across.
     *
     * @param sessions summaries given
     * @param troubles folders that were passed over, or hold another session than their name says, with the reason
     */
    public record Listing(int sessions, List<String> troubles) {
        public Listing {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Gives every session to the taker once, sorted by the name of its folder, that is by time. A folder with which
     * something is wrong never keeps the others from being listed.
     *
     * @throws IOException when the folder cannot be listed
     */
    public Listing each(Consumer<Summary> taker) throws IOException {
        return eachWithFolder((summary, place) -> taker.accept(summary));
    }

    /** The same with the folder that holds each record. */
    Listing eachWithFolder(BiConsumer<Summary, Path> taker) throws IOException {
        List<String> troubles = new ArrayList<>();
        int sessions = 0;
        Set<String> seen = new HashSet<>();
        try (SummaryIndex index = SummaryIndex.in(folder)) {
            for (String name : names()) {
                Optional<BasicFileAttributes> attributes = attributes(name);
                if (attributes.isEmpty()) {
                    continue;
                }
                try {
                    Summary summary = summary(index, name, attributes.get());
                    if (copy(name, summary, seen)) {
                        troubles.add(name + ": holds session " + summary.session() + " once more; it is counted once.");
                        continue;
                    }
                    if (!name.equals(summary.session())) {
                        troubles.add(name + ": holds session " + summary.session() + ".");
                    }
                    taker.accept(summary, folder.resolve(name));
                    sessions++;
                } catch (RecordUnavailableException e) {
                    troubles.add(name + ": " + e.getMessage());
                }
            }
        }
        return new Listing(sessions, troubles);
    }

    private Summary summary(SummaryIndex index, String name, BasicFileAttributes attributes)
            throws IOException, RecordUnavailableException {
        Optional<Summary> known = index.find(name, attributes, examiner.isEmpty());
        if (known.isPresent()) {
            return known.get();
        }
        Path session = folder.resolve(name);
        if (!session.toRealPath().startsWith(folder.toRealPath())) {
            throw new RecordUnavailableException("it leads out of this folder: list the other one by itself.");
        }
        RecordedSession recorded = RecordedSession.read(session);
        examiner.ifPresent(each -> each.accept(recorded));
        Summary summary = Summary.of(recorded);
        index.keep(name, attributes, summary);
        return summary;
    }

    /** Whether the session was given already, or will be from the folder of its own name. */
    private boolean copy(String name, Summary summary, Set<String> seen) {
        boolean elsewhere = !name.equals(summary.session())
                && Files.exists(folder.resolve(summary.session()).resolve(SessionRecord.FILE));
        return elsewhere || !seen.add(summary.session());
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
