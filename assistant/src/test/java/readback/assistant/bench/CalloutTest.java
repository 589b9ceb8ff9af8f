package readback.assistant.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.grammar.Vocabulary;

class CalloutTest {

    private static final int MANY = 200;
    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Expectation SUCTION = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);

    private static final Vocabulary LISTENED = GRAMMAR.vocabulary(SUCTION);

    private static Callout from(long start) {
        return new Callout(GRAMMAR, new SplittableRandom(start));
    }

    private static Callout.Line said(String line, long start) {
        return from(start).of(line, SUCTION, LISTENED);
    }

    private static List<Callout.Line> many(String line) {
        return IntStream.range(0, MANY).mapToObj(start -> said(line, start)).toList();
    }

    @Test
    void the_same_start_gives_the_same_words_and_pauses() {
        for (int start = 0; start < 50; start++) {
            assertThat(said("118", start)).isEqualTo(said("118", start));
        }
        assertThat(many("118").stream().distinct().count()).isGreaterThan(20);
    }

    @Test
    void whatever_way_it_is_called_out_it_means_what_was_to_be_said() {
        for (Callout.Line line : many("118")) {
            Meaning meaning = GRAMMAR.understand(line.words().replace(",", ""), SUCTION)
                    .get(0)
                    .meaning();
            assertThat(meaning.readings()).as(line.words()).hasSize(1);
            assertThat(meaning.readings().get(0).quantity()).isEqualTo(Quantity.SUCTION_PRESSURE);
            assertThat(meaning.readings().get(0).value()).as(line.words()).isEqualByComparingTo("118");
        }
    }

    @Test
    void digits_are_said_with_and_without_pauses_with_the_name_and_with_slips() {
        List<String> words = many("118").stream().map(Callout.Line::words).toList();

        assertThat(words).contains("one eighteen", "one one eight", "one, one, eight");
        assertThat(words).anyMatch(line -> line.startsWith("suction pressure, "));
        assertThat(words).anyMatch(line -> line.startsWith("one seventeen, "));
        assertThat(words).anyMatch(line -> line.startsWith("one nineteen, "));
        assertThat(many("118").stream().filter(Callout.Line::slips).count()).isBetween(MANY / 20L, MANY / 5L);
    }

    @Test
    void an_order_and_a_correction_hold_no_slip() {
        assertThat(many("correction suction pressure 118")).noneMatch(Callout.Line::slips);
        assertThat(many("understood")).allMatch(line -> line.words().equals("understood"));
    }

    @Test
    void an_amount_keeps_its_unit() {
        assertThat(many("4.5 ounces"))
                .allMatch(line -> line.words().endsWith(" ounces"))
                .allMatch(line -> line.words().startsWith("four"));
    }

    @Test
    void small_talk_comes_now_and_then() {
        List<String> talk = new ArrayList<>();
        for (int start = 0; start < MANY; start++) {
            Optional<Callout.Line> line = from(start).smallTalk();
            line.map(Callout.Line::words).ifPresent(talk::add);
        }
        assertThat(talk.size()).isBetween(MANY / 25, MANY / 6);
        assertThat(talk.stream().distinct().count()).isGreaterThan(8);
        assertThat(talk).allMatch(words -> words.toLowerCase(Locale.ROOT).equals(words));
    }
}
