package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillCommandTest {

    @TempDir
    private Path folder;

    private Ran drill(String typed, String... arguments) {
        List<String> all = new ArrayList<>(List.of(
                "drill",
                "--reviews",
                folder.resolve("mine").resolve("drill.jsonl").toString()));
        all.addAll(List.of(arguments));
        return Ran.of(typed, all.toArray(String[]::new));
    }

    @Test
    void answers_are_told_right_or_wrong_and_kept_for_the_next_drill() throws IOException {
        Ran first = drill(
                "by superheat\nby superheat\nby superheat\nby superheat\n",
                "--typed",
                "--skill",
                "method",
                "method-when-cold");

        assertThat(first.code()).isZero();
        assertThat(first.out())
                .contains("2 questions.")
                .contains("No: by weight.")
                .contains("known.");
        List<String> kept = Files.readAllLines(folder.resolve("mine").resolve("drill.jsonl"));
        assertThat(kept)
                .hasSizeGreaterThanOrEqualTo(3)
                .allSatisfy(line -> assertThat(line).contains("\"hash\":"));
        Ran list = drill("", "--list");
        assertThat(list.out().lines().filter(line -> line.startsWith("method ")).toList())
                .singleElement()
                .asString()
                .endsWith("100 %");
        assertThat(list.out()).contains("never asked");
    }

    @Test
    void what_was_answered_before_the_input_ended_counts() {
        Ran run = drill("skip\n", "--typed", "--skill", "split");

        assertThat(run.code()).isZero();
        assertThat(drill("", "--list").out()).containsPattern("split +temperature split +100 %");
    }

    @Test
    void a_skill_that_there_is_not_is_refused_with_the_way_to_the_names() {
        Ran run = drill("", "--typed", "--skill", "juggling");

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("no skill 'juggling'").contains("drill --list");
    }

    @Test
    void answers_that_were_altered_count_up_to_there_and_are_never_added_to() throws IOException {
        drill("skip\nskip\n", "--typed", "--skill", "split", "wet-bulb");
        Path file = folder.resolve("mine").resolve("drill.jsonl");
        String altered = Files.readString(file).replaceFirst("again", "easy ");
        Files.writeString(file, altered);

        Ran run = drill("skip\n", "--typed", "--skill", "nitrogen");

        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("what stands before it counts").contains("cannot be kept");
        assertThat(Files.readString(file)).isEqualTo(altered);
    }

    @Test
    void a_page_shows_every_skill_and_takes_no_file_s_place() throws IOException {
        drill("skip\nskip\n", "--typed", "--skill", "split");
        Path page = folder.resolve("known.html");

        assertThat(drill("", "--html", page.toString()).code()).isZero();
        assertThat(Files.readString(page)).contains("<h1>What you know</h1>").contains("temperature split");
        assertThat(drill("", "--html", page.toString()).code()).isEqualTo(1);
        assertThat(drill("", "--html", page.toString(), "--force").code()).isZero();
    }
}
