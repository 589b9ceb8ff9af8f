package readback.assistant.dialogue.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import readback.calc.caution.Activity;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.fluid.Refrigerant;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

class CautionNoticeTest {

    private static final Caution LIQUID = CautionRule.LIQUID_AT_COMPRESSOR.caution();
    private static final Optional<Refrigerant> UNKNOWN = Optional.empty();

    @Test
    void a_measured_caution_is_given_once_while_its_cause_lasts_and_again_when_it_comes_back() {
        CautionNotice first = CautionNotice.measured(List.of(LIQUID), GivenCautions.NONE);
        CautionNotice still = CautionNotice.measured(List.of(LIQUID), first.given());
        CautionNotice gone = CautionNotice.measured(List.of(), still.given());
        CautionNotice again = CautionNotice.measured(List.of(LIQUID), gone.given());

        assertThat(first.rules()).containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
        assertThat(first.messages()).hasSize(1);
        assertThat(still.messages()).isEmpty();
        assertThat(gone.messages()).isEmpty();
        assertThat(again.rules()).containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    @Test
    void what_must_be_acknowledged_waits_also_when_its_cause_is_gone() {
        assertThat(LIQUID.needsAcknowledgement()).isTrue();

        CautionNotice first = CautionNotice.measured(List.of(LIQUID), GivenCautions.NONE);
        CautionNotice gone = CautionNotice.measured(List.of(), first.given());

        assertThat(gone.given().unheeded()).containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
        assertThat(gone.given().heeded().unheeded()).isEmpty();
    }

    @Test
    void cautions_of_an_activity_are_given_once_a_session() {
        CautionNotice first =
                CautionNotice.ofActivity(Activity.CONNECTING_HOSES, UNKNOWN, GivenCautions.NONE, Set.of());
        CautionNotice second = CautionNotice.ofActivity(Activity.CONNECTING_HOSES, UNKNOWN, first.given(), Set.of());

        assertThat(first.messages()).isNotEmpty();
        assertThat(first.rules()).hasSameSizeAs(first.messages());
        assertThat(second.messages()).isEmpty();
    }

    @Test
    void a_warning_that_was_understood_today_is_named_and_any_other_is_read_out() {
        CautionNotice again = CautionNotice.ofActivity(
                Activity.CONNECTING_HOSES, UNKNOWN, GivenCautions.NONE, Set.of(CautionRule.HIGH_PRESSURE));

        // which refrigerant it is is not known, so it may burn
        assertThat(again.messages().stream().filter(Message::aloud).map(CautionNoticeTest::told))
                .containsExactly("caution.same", "caution.flammable-a2l", "caution.frostbite");
        assertThat(again.messages().stream().map(CautionNoticeTest::told)).contains("caution.high-pressure");
        assertThat(again.rules()).contains(CautionRule.HIGH_PRESSURE);
    }

    @Test
    void what_hurts_nobody_is_shown_before_an_activity_and_said_when_it_is_measured() {
        CautionNotice before =
                CautionNotice.ofActivity(Activity.CONNECTING_HOSES, UNKNOWN, GivenCautions.NONE, Set.of());

        assertThat(before.messages().stream()
                        .filter(message -> !message.aloud())
                        .map(CautionNoticeTest::told))
                .containsExactly("caution.venting-prohibited", "caution.certified-work");
        assertThat(CautionNotice.measured(List.of(CautionRule.LIQUID_AT_COMPRESSOR.caution()), GivenCautions.NONE)
                        .messages())
                .allMatch(Message::aloud);
    }

    private static String told(Message message) {
        return message.facts().get("text") instanceof Fact.Text text
                ? text.message().key()
                : message.key();
    }
}
