package readback.prompts.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Signal;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.condition.Remedy;
import readback.calc.measurement.Instrument;
import readback.calc.measurement.MeteringDevice;
import readback.calc.plausibility.Contradiction;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;

class WordingTest {

    private static final Wording ENGLISH = Language.english().wording();

    @Test
    void a_reading_is_spoken_with_its_name_digits_and_unit() {
        Message message =
                Message.of("readback").with("values", new Fact.Stated(Reading.of(Quantity.SUCTION_PRESSURE, "118")));

        assertThat(ENGLISH.spoken(message, false, UnitSetting.US)).isEqualTo("suction, one one eight p s i.");
        assertThat(ENGLISH.shown(message, UnitSetting.US)).isEqualTo("Suction pressure 118 psig.");
    }

    @Test
    void the_temperature_scale_is_spoken_only_where_it_is_not_the_one_that_is_set() {
        Message celsius = Message.of("readback")
                .with(
                        "values",
                        new Fact.Stated(
                                new Reading(Quantity.SUCTION_LINE_TEMPERATURE, new BigDecimal("11.5"), Unit.CELSIUS)));

        assertThat(ENGLISH.spoken(celsius, false, UnitSetting.METRIC)).isEqualTo("suction line, one one point five.");
        assertThat(ENGLISH.spoken(celsius, false, UnitSetting.US))
                .isEqualTo("suction line, one one point five degrees celsius.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            116   | 7 lb 4 oz   | seven pounds, four ounces
            164   | 10 lb 4 oz  | one zero pounds, four ounces
            123.5 | 7 lb 11.5 oz | seven pounds, one one point five ounces
            17    | 1 lb 1 oz   | one pound, one ounce
            112   | 7 lb        | seven pounds
            4     | 4 oz        | four ounces
            0     | 0 oz        | zero ounces
            -20   | -1 lb 4 oz  | minus one pound, four ounces
            1600  | 100 lb      | one hundred pounds
            """)
    void what_was_said_in_pounds_and_ounces_is_told_so(String ounces, String shown, String spoken) {
        Reading reading = Reading.poundsAndOunces(Quantity.NAMEPLATE_CHARGE, new BigDecimal(ounces));
        Message named = Message.of("readback").with("values", new Fact.Stated(reading));
        Message bare = Message.of("readback").with("values", Fact.amount(reading));

        assertThat(ENGLISH.shown(named, UnitSetting.US)).isEqualTo("Nameplate charge " + shown + ".");
        assertThat(ENGLISH.spoken(named, false, UnitSetting.US)).isEqualTo("plate charge, " + spoken + ".");
        assertThat(ENGLISH.spoken(bare, false, UnitSetting.US)).isEqualTo(spoken + ".");
        assertThat(Fact.amount(reading).shown()).isEqualTo(shown);
    }

    @Test
    void one_thing_is_told_by_its_singular() {
        Message one = Message.of("wait.left").with("minutes", new Fact.Counted(1, Unit.MINUTE));
        Message more = Message.of("wait.left").with("minutes", new Fact.Counted(15, Unit.MINUTE));

        assertThat(ENGLISH.shown(one, UnitSetting.US)).isEqualTo("1 minute left.");
        assertThat(ENGLISH.spoken(one, false, UnitSetting.US)).isEqualTo("one minute left.");
        assertThat(ENGLISH.spoken(more, false, UnitSetting.US)).isEqualTo("fifteen minutes left.");
    }

    @Test
    void several_values_are_joined_as_people_say_them() {
        Fact listing = new Fact.Listing(
                List.of(new Fact.Count(1), new Fact.Count(2), new Fact.Amount(new BigDecimal("3"), Unit.OUNCE)));

        assertThat(ENGLISH.shown(Message.of("readback").with("values", listing), UnitSetting.US))
                .isEqualTo("1, 2 and 3 oz.");
    }

    @Test
    void the_brief_voice_uses_the_shorter_text_and_the_screen_the_full_one() {
        Message ask = Message.of("step.refrigerant.ask");

        assertThat(ENGLISH.spoken(ask, true, UnitSetting.US)).isEqualTo("Refrigerant?");
        assertThat(ENGLISH.shown(ask, UnitSetting.US)).isEqualTo("Which refrigerant is on the rating plate?");
    }

    @Test
    void a_missing_fact_is_a_fault_that_names_text_and_place() {
        assertThatThrownBy(() -> ENGLISH.shown(Message.of("readback"), UnitSetting.US))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("readback")
                .hasMessageContaining("values");
    }

    @Test
    void a_text_that_is_given_twice_is_refused() {
        assertThatThrownBy(() -> Language.read(new StringReader("a = one\na = two\n"), "", new TreeMap<>()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a is given twice");
    }

    static Stream<Step> steps() {
        return Checklists.standard().all().stream().flatMap(list -> list.steps().stream());
    }

    @ParameterizedTest
    @MethodSource("steps")
    void every_step_can_be_asked_asked_again_and_explained(Step step) {
        for (String suffix : List.of(".ask", ".again", ".why", ".how")) {
            assertThat(ENGLISH.has(step.text(suffix).key()))
                    .as(step.text(suffix).key())
                    .isTrue();
        }
        boolean asksAgain = !step.again()
                .equals(new readback.prompts.checklist.StepCondition.Not(
                        new readback.prompts.checklist.StepCondition.Always()));
        assertThat(ENGLISH.has(step.text(".repeat").key()))
                .as(step.id() + ".repeat")
                .isEqualTo(asksAgain);
        if (step.task().reply() == Task.Reply.YES_OR_NO) {
            assertThat(ENGLISH.has(step.text(".no").key()))
                    .as(step.id() + ".no")
                    .isEqualTo(step.task().mustBeYes() || step.task().advised());
            assertThat(ENGLISH.has(step.text(".yes").key()))
                    .as(step.id() + ".yes")
                    .isEqualTo(step.task().advised());
        }
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void every_quantity_has_a_name(Quantity quantity) {
        assertThat(ENGLISH.has("term.quantity." + quantity.name())).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void every_unit_can_be_spoken(Unit unit) {
        assertThat(ENGLISH.has("term.unit." + unit.name())).isTrue();
    }

    static Stream<String> keysThatCalcNeeds() {
        return Stream.of(
                        names("caution.", CautionRule.values()),
                        names("term.signal.", Signal.values()),
                        names("term.metering-device.", MeteringDevice.values()),
                        names("term.instrument.", Instrument.values()),
                        names("condition.", Condition.values()),
                        names("remedy.", Remedy.values()),
                        names("contradiction.", Contradiction.Kind.values()),
                        names("reason.", Verdict.DoNotCharge.Reason.values()),
                        names("term.verdict.", Verdict.Kind.values()),
                        names("why.verdict.", Verdict.Kind.values()))
                .flatMap(each -> each);
    }

    private static Stream<String> names(String prefix, Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(constant ->
                        prefix + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @ParameterizedTest
    @MethodSource("keysThatCalcNeeds")
    void everything_that_calc_can_find_has_words(String key) {
        assertThat(ENGLISH.has(key)).as(key).isTrue();
    }
}
