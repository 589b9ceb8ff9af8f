package readback.assistant.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import readback.prompts.text.Language;

class PlainLinesTest {

    private static final String LONG = "Filter and coils clean, panels on, supply registers open?";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    private PlainLines on(OptionalInt columns) {
        return new PlainLines(new PrintStream(bytes, true, StandardCharsets.UTF_8), Language.english(), columns);
    }

    private List<String> written() {
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void on_a_terminal_lines_are_broken_between_words_under_one_another() {
        on(OptionalInt.of(50)).line("screen.plain.readback", LONG);

        assertThat(written())
                .containsExactly(
                        "readback    Filter and coils clean, panels on,", "            supply registers open?");
    }

    @Test
    void in_a_log_a_sentence_is_a_line_and_nothing_asks_to_be_typed_at() {
        PlainLines lines = on(OptionalInt.empty());

        lines.line("screen.plain.readback", LONG);
        lines.prompt();

        assertThat(written()).containsExactly("readback    " + LONG);
    }

    @Test
    void a_prompt_is_shown_once_and_stands_alone_where_something_is_said_before_one_types() {
        PlainLines lines = on(OptionalInt.of(80));

        lines.prompt();
        lines.prompt();
        lines.line("screen.plain.readback", "Suction pressure?");
        lines.prompt();
        lines.entered();
        lines.line("screen.plain.readback", "Suction line?");

        // the line break after a typed line is the terminal's own
        assertThat(written())
                .containsExactly(
                        "type here > ", "readback    Suction pressure?", "type here > readback    Suction line?");
    }

    @Test
    void a_prompt_comes_back_after_an_aside() {
        PlainLines lines = on(OptionalInt.of(80));

        lines.prompt();
        lines.aside("screen.plain.note", "Too loud here.");

        assertThat(written()).containsExactly("type here > ", "note        Too loud here.", "type here > ");
    }
}
