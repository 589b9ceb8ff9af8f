package readback.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.archive.AnchorLines;
import readback.assistant.record.Anchor;

/** What is wrong among five hundred sessions is found, each thing once and nothing else, however they are packed. */
@Tag("slow")
class VerifyTest {

    /** Calls with which something is wrong. */
    private static final int CHANGED = 310;

    private static final int SHORT_COPY = 7;
    private static final int FORKED = 42;
    private static final int GONE = 99;
    private static final int CUT = 140;
    private static final int FORGED = 203;

    @TempDir
    private Path folder;

    private static String name(int number) {
        return SmallFleet.identity(number).session();
    }

    /** Where a line begins, 1 for the header. */
    private static int start(byte[] record, int line) {
        int at = 0;
        for (int passed = 1; passed < line; at++) {
            passed += record[at] == '\n' ? 1 : 0;
        }
        return at;
    }

    private static byte[] flipped(byte[] record, int line) {
        record[start(record, line) + 20] ^= 1;
        return record;
    }

    private static String head(byte[] record) {
        String text = new String(record, StandardCharsets.UTF_8);
        return text.substring(text.length() - 67, text.length() - 3);
    }

    private Path anchors(SmallFleet fleet) throws IOException {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < SmallFleet.CALLS; i++) {
            lines.add(AnchorLines.of(Anchor.ofRecord(name(i), SmallFleet.kind(i).lines() - 1, head(fleet.get(i)))));
        }
        // what a record was before it went on still holds
        byte[] before = SmallFleet.kind(1).copy(SmallFleet.identity(1), 9);
        lines.add(AnchorLines.of(Anchor.ofRecord(name(1), 8, head(before))));
        lines.add(AnchorLines.of(Anchor.ofRemarks(name(1), 1, head(before))));
        return Files.write(folder.resolve("anchors"), lines);
    }

    private static SmallFleet tampered() {
        SmallFleet fleet = new SmallFleet();
        RecordedCall kind = SmallFleet.kind(FORKED);
        return fleet.with(CHANGED, flipped(fleet.get(CHANGED), 11))
                .and(SmallFleet.kind(SHORT_COPY).copy(SmallFleet.identity(SHORT_COPY), 6))
                .and(kind.rewritten(SmallFleet.identity(FORKED), kind.lines() - 3))
                .without(GONE)
                .with(CUT, SmallFleet.kind(CUT).copy(SmallFleet.identity(CUT), 10))
                .with(FORGED, SmallFleet.kind(FORGED).rewritten(SmallFleet.identity(FORGED), 5));
    }

    @Test
    void an_honest_fleet_holds_and_holds_its_anchors() throws IOException {
        SmallFleet fleet = new SmallFleet();
        Path bundles = fleet.packed(folder.resolve("bundles"), 60);

        FleetRun run = FleetRun.of(
                "verify", bundles.toString(), "--anchors", anchors(fleet).toString());

        assertThat(run.out())
                .contains("500 records of 500 sessions in 9 bundles: 0 do not hold, 0 sessions go on in two ways,"
                        + " 0 records lie there more than once, 0 findings about bundles.")
                .contains("501 of 501 records hold what")
                .contains("1 anchors are of remarks");
        assertThat(run.findings()).isEmpty();
        assertThat(run.code()).isZero();
    }

    @Test
    void everything_that_was_tampered_with_is_told_once_and_nothing_else_however_it_is_packed() throws IOException {
        Path anchors = anchors(new SmallFleet());
        Path inOrder = tampered().packed(folder.resolve("in-order"), 60);
        Path shuffled = tampered().shuffled(folder.resolve("shuffled"), 35);

        FleetRun run = FleetRun.of("verify", inOrder.toString(), "--anchors", anchors.toString());
        FleetRun again = FleetRun.of("verify", shuffled.toString(), "--anchors", anchors.toString());

        int fork = SmallFleet.kind(FORKED).lines() - 4;
        assertThat(run.findings())
                .containsExactlyInAnyOrder(
                        "broken   " + name(CHANGED) + "  line 11 was changed or damaged: its hash does not fit its"
                                + " content  (BUNDLE from byte N)",
                        "fork     " + name(FORKED) + "  goes on in two ways after line " + fork + ": in BUNDLE and in"
                                + " BUNDLE; one of them was rewritten, believe neither before the tablets were looked at",
                        "anchor   " + name(CHANGED) + "  had "
                                + (SmallFleet.kind(CHANGED).lines() - 1) + " events and does not reach so far any more",
                        "anchor   " + name(GONE) + "  had "
                                + (SmallFleet.kind(GONE).lines() - 1) + " events and is in no bundle",
                        "anchor   " + name(CUT) + "  had "
                                + (SmallFleet.kind(CUT).lines() - 1) + " events and does not reach so far any more",
                        "anchor   " + name(FORGED) + "  had "
                                + (SmallFleet.kind(FORGED).lines() - 1) + " events and is another one up to there");
        assertThat(run.out())
                .contains("501 records of 499 sessions in 9 bundles: 1 do not hold, 1 sessions go on in two");
        assertThat(again.findings()).containsExactlyInAnyOrderElementsOf(run.findings());
        assertThat(run.code()).isEqualTo(1);
        assertThat(again.code()).isEqualTo(1);
    }

    @Test
    void bundles_that_are_cut_or_none_are_told_and_the_others_are_verified() throws IOException {
        Path bundles = new SmallFleet().packed(folder.resolve("bundles"), 100);
        Path cut;
        try (Stream<Path> files = Files.list(bundles)) {
            cut = files.filter(file -> file.toString().endsWith(".bundle"))
                    .sorted()
                    .findFirst()
                    .orElseThrow();
        }
        byte[] whole = Files.readAllBytes(cut);
        Files.write(cut, java.util.Arrays.copyOf(whole, whole.length - 300));
        Files.writeString(bundles.resolve("letter.bundle"), "Dear customer\n");

        FleetRun run = FleetRun.of("verify", bundles.toString());

        assertThat(run.findings())
                .hasSize(3)
                .contains(
                        "bundle   BUNDLE was cut: it has " + (whole.length - 300) + " bytes, and its index knows "
                                + whole.length + ": copy it again",
                        "bundle   letter.bundle is no bundle: it does not begin with the header of a session")
                .anyMatch(line -> line.startsWith("broken   call-")
                        && line.contains("was cut off while it was written")
                        && line.contains("it was not so when it was packed"));
        assertThat(run.code()).isEqualTo(1);
    }

    @Test
    void what_cannot_be_verified_is_refused_with_what_could() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        Path letter = Files.writeString(folder.resolve("letter"), "Dear customer\n");

        assertThat(FleetRun.of("verify", empty.toString()))
                .satisfies(run -> assertThat(run.code()).isEqualTo(1))
                .extracting(FleetRun::err)
                .asString()
                .contains("There is no bundle (*.bundle) in " + empty + ": pack the sessions first");
        assertThat(FleetRun.of("verify", folder.resolve("nowhere").toString()).err())
                .contains("There is no '" + folder.resolve("nowhere") + "': name bundles, or folders");
        assertThat(FleetRun.of("verify", empty.toString(), "--anchors", letter.toString())
                        .err())
                .contains("cannot be compared with (line 1 is no anchor)");
        assertThat(FleetRun.of("verify").code()).isEqualTo(2);
        assertThat(FleetRun.of("verify", letter.toString()).findings())
                .containsExactly("bundle   letter is no bundle: it does not begin with the header of a session");
    }
}
