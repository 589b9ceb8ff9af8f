package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.dialogue.Probe;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;

class ProbeMappingTest {

    static final String GAUGE = """
            [suction-gauge]
            from = modbus tcp 127.0.0.1:1502
            unit-id = 1
            function = 4
            register = 0
            type = float32
            word-order = high-first
            unit = Pa
            pressure = absolute
            measures = suction-pressure
            """;

    private static final String CLAMP = """
            # on the pipe
            [clamp]
            from = senml serial /dev/ttyUSB0 9600 8E1
            gives = temperature
            """;

    static ProbeMapping mapping(String text) throws MappingException {
        return ProbeMapping.parse(text.lines().toList(), "probes.txt");
    }

    @Test
    void channelsAreNumberedInTheirOrder() throws MappingException {
        List<Channel> channels = mapping(GAUGE + CLAMP).channels();

        assertThat(channels.get(0))
                .isEqualTo(new Channel(
                        new Probe(1, "suction-gauge", Dimension.GAUGE_PRESSURE, Optional.of(Quantity.SUCTION_PRESSURE)),
                        new Wire.Tcp("127.0.0.1", 1502),
                        new Place.Registers(
                                1, false, 0, new RegisterFormat(RegisterFormat.Type.FLOAT32, true, BigDecimal.ONE)),
                        Optional.of(RawUnit.PASCAL),
                        true));
        assertThat(channels.get(1))
                .isEqualTo(new Channel(
                        new Probe(2, "clamp", Dimension.TEMPERATURE, Optional.empty()),
                        new Wire.Serial("/dev/ttyUSB0", 9600, 8, 'E', 1),
                        new Place.Named("clamp"),
                        Optional.empty(),
                        false));
    }

    @Test
    void onlyTheStandardInputIsReadFromThere() throws MappingException {
        assertThat(mapping(CLAMP).readsStandardInput()).isFalse();
        assertThat(mapping("[a]\nfrom = senml stdin\ngives = temperature").readsStandardInput())
                .isTrue();
    }

    /** Replaces a line of the good mapping, and says what the complaint names. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            from = modbus tcp 127.0.0.1:1502 | from = pigeon                    | senml or modbus
            from = modbus tcp 127.0.0.1:1502 | from = modbus stdin              | modbus tcp HOST:PORT
            from = modbus tcp 127.0.0.1:1502 | from = modbus tcp 127.0.0.1      | modbus tcp HOST:PORT
            from = modbus tcp 127.0.0.1:1502 | from = modbus tcp 127.0.0.1:99999 | modbus tcp HOST:PORT
            from = modbus tcp 127.0.0.1:1502 | from = modbus serial COM3        | PORT BAUD FORMAT
            from = modbus tcp 127.0.0.1:1502 | #                                | has no 'from'
            unit-id = 1                      | unit-id = 256                    | from 0 to 255, not '256'
            function = 4                     | function = 6                     | from 3 to 4
            register = 0                     | register = 65535                 | from 0 to 65534
            register = 0                     | register = first                 | whole number
            type = float32                   | type = double                    | int16, uint16
            word-order = high-first          | word-order = ABCD                | high-first or low-first
            word-order = high-first          | #                                | has no 'word-order'
            unit = Pa                        | unit = inHg                      | one of Pa, kPa
            pressure = absolute              | pressure = relative              | gauge or absolute
            pressure = absolute              | #                                | has no 'pressure'
            measures = suction-pressure      | measures = outdoor-temperature   | the name of a pressure
            measures = suction-pressure      | scale = 0                        | not zero
            measures = suction-pressure      | scale = much                     | not zero
            measures = suction-pressure      | colour = red                     | there is no 'colour'
            measures = suction-pressure      | unit = kPa                       | given twice
            measures = suction-pressure      | [suction-gauge]                  | two channels
            measures = suction-pressure      | [Suction]                        | neither [name]
            """)
    void whatIsWrongIsNamedWithWhatWasExpected(String line, String other, String complaint) {
        assertThat(GAUGE).contains(line);
        assertThatThrownBy(() -> mapping(GAUGE.replace(line, other)))
                .isInstanceOf(MappingException.class)
                .hasMessageContaining(complaint)
                .hasMessageStartingWith("probes.txt, line ");
    }

    @Test
    void oneWireIsUsedInOneWayAndAQuantityMeasuredOnce() {
        assertThatThrownBy(() -> mapping("")).hasMessageContaining("there is no channel");
        assertThatThrownBy(() -> mapping(GAUGE + GAUGE.replace("[suction-gauge]", "[again]")))
                .hasMessageContaining("two channels measure suction-pressure");
        assertThatThrownBy(() ->
                        mapping(CLAMP + CLAMP.replace("[clamp]", "[other]").replace("9600", "19200")))
                .hasMessageContaining("used in two ways");
        assertThatThrownBy(() -> mapping("[b]\nfrom = senml stdin\n")).hasMessageContaining("has no 'gives'");
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 10; i++) {
            many.append("[c").append(i).append("]\nfrom = senml stdin\ngives = temperature\n");
        }
        assertThatThrownBy(() -> mapping(many.toString())).hasMessageContaining("there are 10 channels, and 9");
    }

    @Test
    void aFileThatIsNotThereIsOneSentence() {
        assertThatThrownBy(() -> ProbeMapping.read(Path.of("no-such-file")))
                .isInstanceOf(MappingException.class)
                .hasMessageContaining("'no-such-file' cannot be read");
    }
}
