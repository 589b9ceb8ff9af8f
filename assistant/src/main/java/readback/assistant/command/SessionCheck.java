package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import readback.assistant.archive.Gathering;
import readback.assistant.record.Anchor;
import readback.assistant.record.FolderLedger;
import readback.assistant.record.Oddities;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.replay.Visible;
import readback.calc.name.ConstantName;

/** What {@code sessions --check} finds in folders of records beside their chains. One thread. */
final class SessionCheck {

    private final Console console;
    private final Gathering gathering;
    private final List<String> found = new ArrayList<>();

    SessionCheck(Console console, Gathering gathering) {
        this.console = console;
        this.gathering = gathering;
    }

    /** Looks into a record and the remarks on it. */
    void examine(RecordedSession recorded) {
        String name = String.valueOf(recorded.folder().getFileName());
        Oddities.in(recorded.folder()).forEach(each -> found.add(name + "  odd: " + each));
        try {
            RemarkFile.on(recorded).fault().ifPresent(fault -> found.add(name + "  remarks do not hold: " + fault));
        } catch (RecordUnavailableException e) {
            found.add(name + "  " + e.getMessage());
        }
    }

    /** Whether nothing was found in the records examined; tells what was. */
    boolean nothingFound() {
        found.forEach(each -> console.out().println(Visible.text(each)));
        return found.isEmpty();
    }

    /**
     * Whether the records hold what the ledger of each folder knows of them; tells of those that do not.
     *
     * @param listed names of the sessions that are there
     * @throws IOException when the ledger cannot be read
     */
    boolean ledgerHolds(List<String> listed) throws IOException {
        boolean holds = true;
        List<Anchor> latest = new ArrayList<>();
        for (Path folder : gathering.folders()) {
            FolderLedger.Content ledger = FolderLedger.in(folder).read();
            ledger.fault()
                    .ifPresent(fault -> console.complain("the ledger of '" + folder + "' does not hold: " + fault));
            holds &= ledger.fault().isEmpty();
            latest.addAll(ledger.latest());
        }
        holds &= hold(latest, "the ledger");
        Set<String> known = latest.stream().map(Anchor::session).collect(Collectors.toSet());
        long unknown = listed.stream().filter(name -> !known.contains(name)).count();
        if (unknown > 0) {
            console.out()
                    .println(unknown + " of " + listed.size() + " records are unknown to the ledger: they were made"
                            + " elsewhere, or the ledger was taken away or cut.");
        }
        return holds;
    }

    /** Whether the records, and the remarks on them, hold these anchors; tells of those that do not. */
    boolean hold(List<Anchor> anchors, String source) {
        boolean holds = true;
        for (Anchor.Subject subject : Anchor.Subject.values()) {
            List<Anchor> some =
                    anchors.stream().filter(anchor -> anchor.of() == subject).toList();
            if (subject == Anchor.Subject.RECORD || !some.isEmpty()) {
                holds &= hold(some, subject, source);
            }
        }
        return holds;
    }

    private boolean hold(List<Anchor> anchors, Anchor.Subject subject, String source) {
        boolean records = subject == Anchor.Subject.RECORD;
        int held = 0;
        for (Anchor anchor : anchors) {
            Anchor.Finding finding = gathering.find(anchor);
            if (finding == Anchor.Finding.HOLDS) {
                held++;
            } else {
                console.out()
                        .println(Visible.text(anchor.session()) + (records ? "  " : "  remarks ")
                                + ConstantName.of(finding) + ": it had " + anchor.events()
                                + (records ? " events" : " remarks"));
            }
        }
        console.out()
                .println(held + " of " + anchors.size() + (records ? " records" : " files of remarks") + " hold what "
                        + source + " knows of them.");
        return held == anchors.size();
    }
}
