package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.assistant.recorded.Attack;

/** Every attack on a folder of sessions is found, or told, by the commands of the office; none stops them. */
class AttackTest {

    /**
     * Told by the check, by the verification of the first session, or by the comparison with anchors kept elsewhere.
     */
    private static final Map<Attack, List<String>> TOLD = Map.ofEntries(
            Map.entry(Attack.CUT, List.of("shortened: it had", "does not hold that hash")),
            Map.entry(Attack.ROLL_BACK_RECORD_AND_LEDGER, List.of("shortened: it had", "does not hold that hash")),
            Map.entry(Attack.REORDER, List.of("DAMAGED: line 3", "line 3 does not belong here", "shortened: it had")),
            Map.entry(Attack.FLIP, List.of("DAMAGED: line", "was changed or damaged")),
            Map.entry(
                    Attack.FORGE_VERDICT,
                    List.of("rewritten: it had", "The replay differs first at", "does not hold that hash")),
            Map.entry(Attack.ADD_FIELD, List.of("odd: line 1 has \"approved\"", "rewritten: it had")),
            Map.entry(Attack.DELETE_RECORD, List.of("gone: it had", "There is no session record")),
            Map.entry(Attack.DELETE_FOLDER, List.of("gone: it had", "There is no session record")),
            Map.entry(Attack.DELETE_LEDGER, List.of("2 of 2 records are unknown to the ledger")),
            Map.entry(Attack.EDIT_INDEX, List.of("charge low")),
            Map.entry(
                    Attack.SWAP_REMARKS,
                    List.of("remarks do not hold: line 1 does not belong here", "remarks rewritten")),
            Map.entry(Attack.DELETE_REMARKS, List.of("remarks gone: it had 1", "The remarks are gone")),
            Map.entry(Attack.RENAME_FOLDER, List.of("holds session", "gone: it had")),
            Map.entry(Attack.COPY, List.of("once more; it is counted once", "2 of 2 sessions")),
            Map.entry(Attack.FIFO, List.of("it is no file", "remarks gone")),
            Map.entry(Attack.HUGE_LINE, List.of("larger than any session's record", "shortened: it had")));

    @TempDir
    private Path folder;

    private Path sessions;
    private Path anchors;
    private Path attacked;
    private String hash;

    @BeforeEach
    void twoSessionsWithRemarksAreInTheOfficesHands() throws IOException {
        sessions = folder.resolve("sessions");
        anchors = folder.resolve("anchors.jsonl");
        for (int i = 0; i < 2; i++) {
            Ran.of(
                    "r 410 a\npiston\nunderstood\nyes\nyes\nninety five\nreturn wet bulb sixty seven\nsuction pressure one one"
                            + " eight\nsuction line seventy two\nskip\nten pounds\n",
                    "check",
                    "--typed",
                    "--voice",
                    "none",
                    "--altitude-ft",
                    "0",
                    "--sessions",
                    sessions.toString());
        }
        List<Path> all = Attack.folders(sessions);
        for (Path session : all) {
            Ran.of("", "remark", session.toString(), "On " + session.getFileName(), "--by", "Vera Lund");
        }
        Ran.of("", "sessions", sessions.toString(), "--anchors", anchors.toString());
        attacked = all.get(0);
        hash = Ran.of("", "replay", attacked.toString(), "--verify")
                .out()
                .replaceAll("(?s).*Hash of the record: ([0-9a-f]{64}).*", "$1");
    }

    /** Everything that the office is told, and whether a command said that all is well. */
    private record Told(List<String> words, boolean allWell) {}

    private Told asked() {
        List<Ran> runs = new ArrayList<>();
        // a pipe in the place of a file must stop nobody
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            runs.add(Ran.of("", "sessions", sessions.toString(), "--check", "--against", anchors.toString()));
            runs.add(Ran.of("", "replay", attacked.toString(), "--verify", "--hash", hash));
            runs.add(Ran.of("", "history", sessions.toString()));
        });
        return new Told(
                runs.stream().map(ran -> ran.out() + ran.err()).toList(),
                runs.stream().allMatch(ran -> ran.code() == 0));
    }

    @ParameterizedTest
    @EnumSource(Attack.class)
    void every_attack_is_found_or_told(Attack attack) throws IOException {
        Told before = asked();
        assertThat(before.allWell()).as(before.toString()).isTrue();
        List<String> signs = Objects.requireNonNull(TOLD.get(attack));
        for (String sign : signs) {
            if (attack != Attack.EDIT_INDEX && attack != Attack.COPY) {
                assertThat(String.join("\n", before.words())).doesNotContain(sign);
            }
        }

        attack.perform(sessions);

        Told after = asked();
        assertThat(String.join("\n", after.words())).contains(signs).doesNotContain("unexpected fault");
        assertThat(Files.exists(anchors)).isTrue();
    }
}
