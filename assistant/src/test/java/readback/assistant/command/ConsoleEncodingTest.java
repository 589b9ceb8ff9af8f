package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import org.junit.jupiter.api.Test;

/** Code page 850: the degree sign is byte F8, as the Unicode consortium's table CP850.TXT has it. */
class ConsoleEncodingTest {

    private static final Charset CODE_PAGE = Charset.forName("IBM850");

    private static Properties machine(String system, String told) {
        Properties properties = new Properties();
        properties.setProperty("os.name", system);
        properties.setProperty("sun.stdout.encoding", told);
        return properties;
    }

    @Test
    void aConsoleOfWindowsGetsItsCodePage() {
        assertThat(ConsoleEncoding.of(machine("Windows 11", "cp850"), "stdout")).isEqualTo(CODE_PAGE);
    }

    @Test
    void pipesAndOtherSystemsGetUtf8() {
        assertThat(ConsoleEncoding.of(machine("Windows 11", ""), "stdout")).isEqualTo(StandardCharsets.UTF_8);
        assertThat(ConsoleEncoding.of(machine("Windows 11", "cp850"), "stderr")).isEqualTo(StandardCharsets.UTF_8);
        assertThat(ConsoleEncoding.of(machine("Linux", "ANSI_X3.4-1968"), "stdout"))
                .isEqualTo(StandardCharsets.UTF_8);
    }

    @Test
    void whatTheCodePageLacksIsPutOtherwise() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();

        new VisibleStream(bytes, CODE_PAGE).print("\u22124\u00b0F \u2026");

        assertThat(bytes.toByteArray()).containsExactly('-', '4', (byte) 0xf8, 'F', ' ', '.', '.', '.');
    }
}
