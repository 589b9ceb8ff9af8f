package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.Understood;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Meaning;

/** What records of the first schema kept as text comes back typed. */
class FirstSchemaTest {

    private static final Path CONVERSATIONS = Path.of("src/test/resources/readback/assistant/golden");

    @Test
    void a_line_gives_the_meaning_that_it_was_written_from() {
        assertThat(FirstSchema.understood("suction-pressure 118 psig, suction-line-temperature 62.5 °F"))
                .isEqualTo(new Understood.Meant(new Meaning.Values(List.of(
                        new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("118"), Unit.PSIG),
                        new Reading(Quantity.SUCTION_LINE_TEMPERATURE, new BigDecimal("62.5"), Unit.FAHRENHEIT)))));
        assertThat(FirstSchema.understood("not understood: I did not understand that.")
                        .doubtful())
                .isTrue();
        assertThat(FirstSchema.understood("held")).isEqualTo(Understood.Occurrence.HELD);
        assertThatThrownBy(() -> FirstSchema.understood("something else"))
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
                        .map(line -> line.substring(5, line.length() - 1))
                        .forEach(lines::add);
            }
        }

        assertThat(lines).hasSizeGreaterThan(100);
        assertThat(lines)
                .allSatisfy(
                        line -> assertThat(FirstSchema.understood(line).line()).isEqualTo(line));
    }
}
