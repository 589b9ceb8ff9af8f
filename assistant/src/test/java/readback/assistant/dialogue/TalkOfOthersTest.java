package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.grammar.Hypothesis;

/** An utterance that closely follows talk not meant for us needs more belief to be looked at. */
class TalkOfOthersTest {

    private static final List<Hypothesis.Word> TWO_SECONDS =
            List.of(new Hypothesis.Word("one", 1, 4.0, 5.0), new Hypothesis.Word("eighteen", 1, 5.0, 6.0));

    private final Rehearsal rehearsal =
            new Rehearsal().says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67");

    private void talk() {
        rehearsal.hears(new Hypothesis("[unk] [unk] nine", 0.9, List.of()));
    }

    /** "One eighteen", two seconds long, believed to 0.7, the quiet before it so many seconds long. */
    private void afterQuiet(double seconds) {
        rehearsal.passes(Duration.ofMillis(Math.round((seconds + 2) * 1000)));
        rehearsal.happens(new Event.Heard(
                rehearsal.now(),
                Event.Source.VOICE,
                List.of(
                        new Hypothesis("one eighteen", 0.7, TWO_SECONDS),
                        new Hypothesis("[unk] eighteen", 0.29, TWO_SECONDS))));
    }

    private boolean taken() {
        return rehearsal.state().sheet().reading(Quantity.SUCTION_PRESSURE).isPresent();
    }

    @Test
    void what_goes_on_with_talk_is_not_taken_but_a_number_is_asked_for_again() {
        talk();
        assertThat(rehearsal.messages()).isEmpty();
        afterQuiet(1.5);

        assertThat(taken()).isFalse();
        assertThat(rehearsal.shown()).startsWith("Again?");
    }

    @Test
    void after_a_while_of_quiet_it_is_heard_as_ever() {
        talk();
        afterQuiet(2.5);

        assertThat(taken()).isTrue();
    }

    @Test
    void what_was_meant_for_us_is_no_talk() {
        rehearsal.hears(new Hypothesis("say again", 0.99, List.of()));
        afterQuiet(0.5);

        assertThat(taken()).isTrue();
    }

    @Test
    void a_clear_word_is_heard_amid_talk() {
        talk();
        rehearsal.happens(new Event.Heard(
                rehearsal.now().plusMillis(800),
                Event.Source.VOICE,
                List.of(new Hypothesis("one eighteen", 0.97, List.of()))));

        assertThat(taken()).isTrue();
    }
}
