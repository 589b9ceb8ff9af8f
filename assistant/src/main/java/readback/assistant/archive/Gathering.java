package readback.assistant.archive;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import readback.assistant.record.Anchor;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;

/** The sessions of several tablets: folders of sessions, or trees with such folders in them. Each session once. */
public final class Gathering {

    /** Deeper nested folders are not looked into. */
    private static final int DEEPEST = 6;

    private final List<Path> folders;
    private final Optional<Consumer<RecordedSession>> examiner;

    private Gathering(List<Path> folders, Optional<Consumer<RecordedSession>> examiner) {
        this.folders = List.copyOf(folders);
        this.examiner = examiner;
    }

    /**
     * Every folder with sessions at or below these.
     *
     * @throws IOException when one cannot be listed
     */
    public static Gathering below(List<Path> roots) throws IOException {
        Set<Path> found = new LinkedHashSet<>();
        for (Path root : roots) {
            int before = found.size();
            search(root.toAbsolutePath().normalize(), DEEPEST, found);
            if (found.size() == before) {
                found.add(root.toAbsolutePath().normalize());
            }
        }
        return new Gathering(List.copyOf(found), Optional.empty());
    }

    private static void search(Path folder, int deeper, Set<Path> found) throws IOException {
        List<Path> others = new ArrayList<>();
        boolean sessions = false;
        try (DirectoryStream<Path> children = Files.newDirectoryStream(folder)) {
            for (Path child : children) {
                if (Files.exists(child.resolve(SessionRecord.FILE))) {
                    sessions = true;
                } else if (Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS)) {
                    others.add(child);
                }
            }
        }
        if (sessions) {
            found.add(folder);
        }
        if (deeper > 0) {
            others.sort(null);
            for (Path other : others) {
                search(other, deeper - 1, found);
            }
        }
    }

    /**
     * The same sessions, with every record read and its chain checked.
     *
     * @param further gets each record that could be read
     */
    public Gathering checked(Consumer<RecordedSession> further) {
        return new Gathering(folders, Optional.of(further));
    }

    /** The folders with sessions; the ones named where none was found. */
    public List<Path> folders() {
        return folders;
    }

    /** A session and where its record lies. */
    private record Found(Summary summary, Path folder) {}

    /**
     * Gives every session to the taker once, with the folder that its record lies in: of one folder sorted by name, of
     * several by start. Of two records of one session the longer one counts where it goes on from the other; where they
     * part, both are told.
     *
     * @throws IOException when a folder cannot be listed
     */
    public Archive.Listing each(BiConsumer<Summary, Path> taker) throws IOException {
        if (folders.size() == 1) {
            return archive(folders.get(0)).eachWithFolder(taker);
        }
        List<String> troubles = new ArrayList<>();
        Map<String, Found> each = new HashMap<>();
        for (Path folder : folders) {
            Archive.Listing listing = archive(folder).eachWithFolder((summary, place) -> {
                Found found = new Found(summary, place);
                Found before = each.get(summary.session());
                each.put(summary.session(), before == null ? found : longer(before, found, troubles));
            });
            listing.troubles().forEach(trouble -> troubles.add(folder + ": " + trouble));
        }
        each.values().stream()
                .sorted(Comparator.comparing((Found found) -> found.summary().started())
                        .thenComparing(found -> found.summary().session()))
                .forEach(found -> taker.accept(found.summary(), found.folder()));
        return new Archive.Listing(each.size(), troubles);
    }

    private Archive archive(Path folder) {
        return examiner.map(Archive.in(folder)::checked).orElseGet(() -> Archive.in(folder));
    }

    private static Found longer(Found one, Found other, List<String> troubles) {
        Found more = one.summary().events() >= other.summary().events() ? one : other;
        Found less = more.equals(one) ? other : one;
        if (more.summary().hash().equals(less.summary().hash())) {
            troubles.add(less.folder() + ": holds session " + less.summary().session() + " once more, as in "
                    + more.folder() + "; it is counted once.");
        } else if (goesOn(less, more)) {
            troubles.add(less.folder() + ": holds an earlier state of session "
                    + less.summary().session() + "; that in " + more.folder() + " counts.");
        } else {
            troubles.add(
                    less.folder() + ": holds another session " + less.summary().session() + " than " + more.folder()
                            + ": one of them was rewritten. That in " + more.folder() + " is listed.");
        }
        return more;
    }

    /** Whether the longer record had, after as many events, the hash that the shorter one ends with. */
    private static boolean goesOn(Found less, Found more) {
        Path name = more.folder().getFileName();
        Path parent = more.folder().getParent();
        return name != null
                && parent != null
                && Anchor.ofRecord(
                                        name.toString(),
                                        less.summary().events(),
                                        less.summary().hash())
                                .in(parent)
                        == Anchor.Finding.HOLDS;
    }

    /** What became of an anchored record in whichever folder it lies. */
    public Anchor.Finding find(Anchor anchor) {
        List<Anchor.Finding> findings = Stream.concat(folders.stream().map(anchor::in), Stream.of(Anchor.Finding.GONE))
                .toList();
        return findings.contains(Anchor.Finding.HOLDS)
                ? Anchor.Finding.HOLDS
                : findings.stream()
                        .filter(finding -> finding != Anchor.Finding.GONE)
                        .findFirst()
                        .orElse(Anchor.Finding.GONE);
    }
}
