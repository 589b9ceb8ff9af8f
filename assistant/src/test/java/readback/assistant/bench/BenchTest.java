package readback.assistant.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.assistant.dialogue.Dialogue;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;
import readback.prompts.text.Wording;

class BenchTest {

    private static final Dialogue DIALOGUE = new Dialogue(Grammar.standard(), Checklists.standard());
    private static final Wording WORDING = Language.english().wording();
    private static final long START = 20_261_128;
    private static final int CALLS = 60;

    private static Bench bench(Level level) {
        return new Bench(DIALOGUE, START, level);
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    @Tag("slow")
    void the_same_calls_end_the_same_and_none_is_without_end(Level level) {
        List<String> lines = bench(level).measure(CALLS, made -> {});

        assertThat(lines)
                .isEqualTo(bench(level).measure(CALLS, made -> {}))
                .anySatisfy(line -> assertThat(line).contains("dialogue without an end", "0 of    60"))
                .anySatisfy(line -> assertThat(line).startsWith("sound "))
                .anySatisfy(line -> assertThat(line).startsWith("undercharge "));
    }

    @Test
    void another_start_gives_other_calls() {
        assertThat(new Bench(DIALOGUE, START + 1, Level.CHECKLIST).repeat(2, WORDING))
                .isNotEqualTo(bench(Level.CHECKLIST).repeat(2, WORDING));
    }

    @Test
    void a_call_made_alone_is_the_one_of_the_whole_run() {
        Bench after = bench(Level.FULL);
        after.measure(CALLS / 4, made -> {});

        assertThat(bench(Level.FULL).repeat(7, WORDING))
                .isEqualTo(after.repeat(7, WORDING))
                .first()
                .asString()
                .startsWith("call 7: ");
    }

    /** Some compressor is threatened in these calls and the technician told of it: looked for until it is found. */
    @Test
    void a_caution_that_was_given_does_not_count_as_missed() {
        Bench bench = bench(Level.FULL);

        assertThat(IntStream.rangeClosed(1, CALLS)
                        .mapToObj(call -> bench.repeat(call, WORDING))
                        .map(lines -> lines.get(lines.size() - 1))
                        .anyMatch(end -> !end.contains("threatened by nothing") && end.endsWith("unwarned of nothing")))
                .isTrue();
    }

    @Test
    void every_call_is_told_of_once_it_is_made() {
        int[] last = {0};

        bench(Level.CHECKLIST).measure(3, made -> assertThat(made).isEqualTo(++last[0]));

        assertThat(last[0]).isEqualTo(3);
    }
}
