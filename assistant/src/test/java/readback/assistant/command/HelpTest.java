package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the help prints: whole sentences, in paragraphs that fill their lines. */
class HelpTest {

    private static final int WIDTH = 100;

    /** What the library that prints the help leaves free at the end of a line. */
    private static final int MARGIN = 3;

    private static final Pattern NAMED = Pattern.compile("^  ([a-z]+) {2,}(\\S.*)$");

    /** The list stands between its title and the blank line after it; a summary may go on in further lines. */
    private static List<List<String>> summaries() {
        List<List<String>> all = new ArrayList<>();
        String out = Ran.of("", "help").out();
        out.substring(out.indexOf("Commands:"), out.indexOf("Try first:"))
                .lines()
                .skip(1)
                .filter(line -> !line.isBlank())
                .forEach(line -> {
                    Matcher named = NAMED.matcher(line);
                    if (named.matches()) {
                        all.add(new ArrayList<>(List.of(named.group(1), named.group(2))));
                    } else {
                        all.get(all.size() - 1).add(line.strip());
                    }
                });
        return all;
    }

    static Stream<String> commands() {
        return summaries().stream().map(summary -> summary.get(0));
    }

    @Test
    void every_command_is_summed_up_in_whole_sentences() {
        assertThat(summaries())
                .hasSizeGreaterThan(15)
                .allSatisfy(summary -> assertThat(summary.get(summary.size() - 1))
                        .as(summary.get(0))
                        .endsWith("."));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void no_line_ends_before_the_next_word_would_leave_the_page(String command) {
        List<String> lines = Ran.of("", "help", command).out().lines().toList();

        List<String> early = new ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i++) {
            String line = lines.get(i);
            String next = lines.get(i + 1);
            boolean goesOn = line.matches("[A-Za-z].*[^.:?!]") && !line.startsWith("Usage:") && next.matches("\\S.*");
            if (goesOn && line.length() + 1 + next.split(" ", 2)[0].length() < WIDTH - MARGIN) {
                early.add(line);
            }
        }

        assertThat(early).isEmpty();
        assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(WIDTH));
    }
}
