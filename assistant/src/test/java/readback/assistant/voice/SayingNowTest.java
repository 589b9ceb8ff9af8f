package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which of its words a voice is saying at a moment. */
class SayingNowTest {

    private static final long SECOND = 1_000_000_000L;

    private final SayingNow saying = new SayingNow(
            "Add slowly. A blend goes in as liquid, metered into the suction side. Say understood.", 5 * SECOND, 6);

    @Test
    void the_last_word_is_said_at_the_end_and_not_before() {
        assertThat(saying.says("understood", 5 * SECOND)).isFalse();
        assertThat(saying.says("understood", 8 * SECOND)).isFalse();
        assertThat(saying.says("understood", 11 * SECOND)).isTrue();
    }

    @Test
    void after_the_phrase_nothing_is_said() {
        assertThat(saying.says("understood", 13 * SECOND)).isFalse();
    }

    @Test
    void part_of_a_word_is_no_word() {
        assertThat(new SayingNow("Nothing is known.", 0, 1).says("no", SECOND / 2))
                .isFalse();
    }

    @Test
    void a_word_that_it_does_not_say_is_someone_elses() {
        assertThat(saying.says("stop", 8 * SECOND)).isFalse();
        assertThat(SayingNow.NOTHING.says("stop", 8 * SECOND)).isFalse();
    }
}
