package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Meaning;
import readback.prompts.checklist.Slot;

/** What records of earlier schemas kept as text comes back typed. */
class EarlierLinesTest {

    /** Outcomes that the earlier schemas never knew. */
    private static final List<String> LATER = List.of(
            "frozen-coil",
            "cfm-per-ton",
            "functional-check",
            "too-much-for-rooms",
            "applicable-test",
            "heating ",
            "heater-airflow",
            "capacity ");

    private static final Path CONVERSATIONS = Path.of("src/test/resources/readback/assistant/golden");

    @Test
    void a_line_gives_the_meaning_that_it_was_written_from() {
        assertThat(EarlierSchemas.understood("suction-pressure 118 psig, suction-line-temperature 62.5 °F"))
                .isEqualTo(new Understood.Meant(new Meaning.Values(List.of(
                        new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("118"), Unit.PSIG),
                        new Reading(Quantity.SUCTION_LINE_TEMPERATURE, new BigDecimal("62.5"), Unit.FAHRENHEIT)))));
        assertThat(EarlierSchemas.understood("not understood: I did not understand that.")
                        .doubtful())
                .isTrue();
        assertThat(EarlierSchemas.understood("held")).isEqualTo(Understood.Occurrence.HELD);
        assertThatThrownBy(() -> EarlierSchemas.understood("something else"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("something else");
    }

    @Test
    void every_line_of_the_reviewed_conversations_comes_back_as_it_was() throws IOException {
        TreeSet<String> lines = new TreeSet<>();
        try (Stream<Path> files = Files.list(CONVERSATIONS)) {
            for (Path file : files.toList()) {
                Files.readAllLines(file).stream()
                        .filter(line -> line.matches(" {4}\\[.*]"))
                        // events that the first schema did not know
                        .filter(line -> !line.contains("[clock changed by "))
                        // which the earlier schemas kept as a sentence
                        .filter(line -> !line.contains("[ignored: "))
                        .map(line -> line.substring(5, line.length() - 1))
                        .forEach(lines::add);
            }
        }

        assertThat(lines).hasSizeGreaterThan(100);
        assertThat(lines)
                .allSatisfy(line ->
                        assertThat(EarlierSchemas.understood(line).line()).isEqualTo(line));
    }

    @Test
    void every_outcome_of_the_reviewed_conversations_comes_back_as_it_was() throws IOException {
        TreeSet<String> outcomes = new TreeSet<>();
        try (Stream<Path> files = Files.list(CONVERSATIONS)) {
            for (Path file : files.toList()) {
                Files.readAllLines(file).stream()
                        .filter(line -> line.startsWith("= ") && !line.equals("= no verdict"))
                        // the earlier schemas knew no such outcomes
                        .filter(line -> LATER.stream().noneMatch(line::contains))
                        .map(line -> line.substring(2))
                        .forEach(outcomes::add);
            }
        }

        assertThat(outcomes).hasSizeGreaterThan(40);
        assertThat(outcomes)
                .allSatisfy(line -> assertThat(JobOutcome.line(EarlierSchemas.outcomes(line)))
                        .isEqualTo(line));
    }

    @Test
    void contents_come_back_as_they_were() {
        assertThat(EarlierSchemas.change("SUCTION_PRESSURE", "118.0 psig"))
                .isEqualTo(new Change(
                        Slot.of(Quantity.SUCTION_PRESSURE),
                        Optional.empty(),
                        Optional.of(new Content.Value(
                                new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("118.0"), Unit.PSIG)))));
        assertThat(List.of("done", "skipped", "cut short by PT4M10S", "R-410A", ""))
                .allSatisfy(line ->
                        assertThat(EarlierSchemas.change("any", line).line()).isEqualTo(line));
        assertThatThrownBy(() -> EarlierSchemas.change("SUCTION_PRESSURE", "118 lb"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lb");
    }
}
