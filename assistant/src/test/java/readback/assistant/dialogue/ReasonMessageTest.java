package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Reason;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** Why words could not be taken, in English. */
class ReasonMessageTest {

    private static String shown(Reason reason) {
        Message message = ReasonMessage.of(reason);
        return Language.english().wording().shown(message, UnitSetting.US);
    }

    @ParameterizedTest
    @EnumSource(Reason.Kind.class)
    void every_kind_has_a_text_whose_places_its_facts_can_fill(Reason.Kind kind) {
        Reading reading = Reading.of(Quantity.SUCTION_PRESSURE, "118");
        Reason full = new Reason(
                kind,
                List.of("one", "two"),
                Optional.of(Quantity.SUCTION_PRESSURE),
                List.of(reading, reading, reading));

        assertThat(shown(full)).isNotBlank().doesNotContain("{");
    }

    @Test
    void numbers_that_are_two_are_told_apart() {
        assertThat(shown(Reason.of(Reason.Kind.TWO_NUMBERS, "sixty", "fifteen")))
                .isEqualTo("\"sixty\" and then \"fifteen\" is not one number.");
    }

    @Test
    void a_value_outside_what_can_be_is_refused_with_the_range() {
        Reason reason = new Reason(
                Reason.Kind.OUT_OF_RANGE,
                List.of(),
                Optional.of(Quantity.RUN_TIME),
                List.of(
                        Reading.of(Quantity.RUN_TIME, "90000"),
                        Reading.of(Quantity.RUN_TIME, "0"),
                        Reading.of(Quantity.RUN_TIME, "1440")));

        assertThat(shown(reason)).isEqualTo("The running time cannot be 90000 min; it is between 0 min and 1440 min.");
    }
}
