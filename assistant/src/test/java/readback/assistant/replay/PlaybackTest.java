package readback.assistant.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.recorded.Scripted;
import readback.prompts.text.Language;

/** A recorded conversation shown again. */
class PlaybackTest {

    private static List<RecordedSession> recorded = List.of();

    @BeforeAll
    static void record(@TempDir Path sessions) throws Exception {
        recorded = List.of(Scripted.pistonReadings("played").readFrom(sessions));
    }

    private static RecordedSession session() {
        return recorded.get(0);
    }

    private static String played(Playback.Viewer viewer, Playback.Next first) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new Playback(new PrintStream(out, true, StandardCharsets.UTF_8), Language.english(), viewer)
                .play(session(), first);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void shows_both_sides_with_times_and_pauses() {
        assertThat(played(new Playback.Viewer() {}, Playback.Next.ENTRY).lines())
                .containsSubsequence(
                        "00:05  technician  four ten a",
                        "       readback    R-410A.",
                        "00:12  technician  piston",
                        "        ... 00:18 later",
                        "00:30  technician  understood",
                        "02:30  technician  mumble mumble",
                        "       * doubt: not understood: I do not know \"mumble\" here.");
    }

    @Test
    void lets_every_pause_pass_in_full() {
        List<Duration> pauses = new ArrayList<>();
        played(
                new Playback.Viewer() {
                    @Override
                    public void pause(Duration pause) {
                        pauses.add(pause);
                    }
                },
                Playback.Next.ENTRY);
        assertThat(pauses.stream().mapToLong(Duration::toSeconds).sum())
                .isEqualTo(Duration.between(
                                Scripted.START,
                                session()
                                        .entries()
                                        .get(session().entries().size() - 1)
                                        .event()
                                        .at())
                        .toSeconds());
    }

    @Test
    void jumps_from_moment_to_moment_and_stops_when_told() {
        List<Integer> seen = new ArrayList<>();
        List<Playback.Next> script =
                List.of(Playback.Next.to(Moment.DOUBT), Playback.Next.to(Moment.VERDICT), Playback.Next.STOP);
        String shown = played(
                new Playback.Viewer() {
                    @Override
                    public Playback.Next after(Entry entry) {
                        seen.add(entry.number());
                        return script.get(seen.size() - 1);
                    }
                },
                Playback.Next.to(Moment.CAUTION));
        assertThat(seen).hasSize(3);
        assertThat(shown)
                .contains("* caution: high pressure")
                .contains("* doubt: not understood")
                .contains("* verdict: charge low")
                .contains("events passed over");
    }

    @Test
    void controls_and_directions_hidden_in_words_become_visible() {
        assertThat(Visible.text("a\u001b[2Jb\u202Ec\u0000\n\ud800"))
                .isEqualTo("a\u241b[2Jb[U+202e]c\u2400\u240a[U+d800]");
        assertThat(Visible.text("Grüße, 67 °F, 漢字")).isEqualTo("Grüße, 67 °F, 漢字");
    }
}
