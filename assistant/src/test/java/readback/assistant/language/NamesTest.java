package readback.assistant.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Understood;
import readback.assistant.record.RecordFault;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Signal;
import readback.calc.charge.Verdict;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.grammar.Reason;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/** What ids are called in English. */
class NamesTest {

    private final Names names = new Names(Language.english());

    static Stream<String> constants() {
        return Stream.of(
                        of("term.order.", Command.values()),
                        of("term.ignored.", Decision.Ignorance.values()),
                        of("term.occurrence.", Understood.Occurrence.values()),
                        of("term.caution.", CautionRule.values()),
                        of("term.signal.", Signal.values()),
                        of("term.verdict.", Verdict.Kind.values()),
                        of("term.outcome.airflow.", SplitCheck.Outcome.values()),
                        of("term.outcome.pressure-test.", StandingPressure.Outcome.values()),
                        of("term.outcome.evacuation.", VacuumDecay.Outcome.values()),
                        of("term.outcome.weighed-in.", WeighIn.Outcome.values()),
                        of("term.outcome.resting-pressure.", RestingPressure.Outcome.values()),
                        of("report.fault.", RecordFault.Kind.values()),
                        of("not-understood.", Reason.Kind.values()))
                .flatMap(each -> each);
    }

    private static Stream<String> of(String heading, Enum<?>[] constants) {
        return Stream.of(constants).map(each -> heading + ConstantName.of(each));
    }

    @ParameterizedTest
    @MethodSource("constants")
    void every_constant_that_a_reader_meets_has_a_name(String key) {
        assertThat(Language.english().find(key)).isPresent();
    }

    @Test
    void every_option_of_every_set_has_a_name() {
        Grammar grammar = Grammar.standard();
        for (String set : grammar.choices().sets()) {
            assertThat(names.slot(new Slot(set))).isNotBlank();
            assertThat(grammar.choices().options(set))
                    .allSatisfy(option -> assertThat(names.option(set, option)).isNotBlank());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "add, charge low",
        "airflow sufficient, airflow sufficient",
        "weigh-in 250g, charge to weigh in 250 g",
        "weighed-in nothing, weighed in without a figure",
        "frozen-coil thawed, frozen coil: thawed",
    })
    void outcomes_are_named_as_lists_show_them(String outcome, String name) {
        assertThat(names.outcome(outcome)).isEqualTo(name);
    }

    @Test
    void a_refrigerant_keeps_its_designation() {
        assertThat(names.option("refrigerant", "R-410A")).isEqualTo("R-410A");
    }

    @Test
    void what_was_understood_is_told_with_names_and_values() {
        Reading suction = new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("118"), Unit.PSIG);

        assertThat(names.understood(new Understood.Meant(new Meaning.Values(List.of(suction)))))
                .isEqualTo("suction pressure 118 psig");
        assertThat(names.understood(new Understood.Meant(new Meaning.Choice("checklist", "airflow"))))
                .isEqualTo("job: the airflow check");
        assertThat(names.understood(new Understood.Meant(
                        new Meaning.NotUnderstood("banana", Reason.of(Reason.Kind.UNKNOWN_WORD, "banana")))))
                .isEqualTo("not understood: I do not know \"banana\" here.");
        assertThat(names.understood(new Understood.Elapsed("settle"))).isEqualTo("timer: settling time");
    }

    @Test
    void a_wait_that_was_cut_short_is_told_in_minutes_and_seconds() {
        Content cut = new Content.Passed(Duration.ofSeconds(130));

        assertThat(names.content(new Slot("settle"), cut)).isEqualTo("cut short by 2:10");
    }

    @Test
    void a_name_gets_a_capital_where_it_stands_alone() {
        assertThat(Names.capital("piston")).isEqualTo("Piston");
        assertThat(Names.capital("")).isEmpty();
    }
}
