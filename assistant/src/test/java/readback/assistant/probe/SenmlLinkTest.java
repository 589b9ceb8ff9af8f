package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SenmlLinkTest {

    private final List<ProbeSample> samples = new ArrayList<>();

    private SenmlLink link(String bytes, String mapping) throws MappingException {
        Channel channel = ProbeMappingTest.mapping(mapping).channels().get(0);
        LineSource source = new LineSource() {
            @Override
            public InputStream open() {
                return new ByteArrayInputStream(bytes.getBytes(StandardCharsets.UTF_8));
            }

            @Override
            public void close() {
                // nothing is open
            }
        };
        return new SenmlLink(
                source,
                Map.of(((Place.Named) channel.place()).name(), channel),
                (any, sample) -> samples.add(sample),
                () -> 10_000_000_000L,
                () -> 1.8e9);
    }

    private List<ProbeSample> read(String bytes, String mapping) throws MappingException, IOException {
        SenmlLink link = link(bytes, mapping);
        link.open();
        assertThatThrownBy(() -> {
                    while (true) {
                        link.next();
                    }
                })
                .isInstanceOf(EOFException.class);
        return samples;
    }

    private static final String SUCTION = "[suction]\nfrom = senml stdin\ngives = pressure\npressure = gauge\n";

    @Test
    void aLineGivesItsValueWithUnitAndKindOfPressure() throws Exception {
        assertThat(read("[{\"n\":\"suction\",\"u\":\"Pa\",\"v\":813581}]\n", SUCTION))
                .containsExactly(new ProbeSample(813581, "813581 Pa(g)", 10_000_000_000L));
    }

    @Test
    void aLineThatIsCutOffInTheMiddleSaysNothingAndSpoilsNoOther() throws Exception {
        String whole = "[{\"n\":\"suction\",\"u\":\"Pa\",\"v\":813581}]\n";

        assertThat(read(whole.substring(0, 20) + "\n" + whole + whole.substring(0, 30), SUCTION))
                .hasSize(1);
    }

    @Test
    void aUnitThatIsNotOneOfTheRfcIsNoNumber() throws Exception {
        assertThat(read("""
                        [{"n":"suction","u":"psi","v":118}]
                        [{"n":"suction","v":118}]
                        [{"n":"suction","u":"Cel","v":118}]
                        """, SUCTION)).extracting(ProbeSample::raw).containsExactly("118 psi", "118", "118 Cel");
        assertThat(samples).extracting(ProbeSample::base).containsOnly(Double.NaN);
    }

    @Test
    void theMappingNamesTheUnitWhereTheLinesNameNone() throws Exception {
        assertThat(read("[{\"n\":\"suction\",\"v\":100}]\n", SUCTION.replace("gives = pressure", "unit = kPa")))
                .containsExactly(new ProbeSample(100_000, "100 kPa(g)", 10_000_000_000L));
    }

    @Test
    void anOldValueIsNone() throws Exception {
        assertThat(read("""
                        [{"n":"suction","u":"Pa","t":-4,"v":1}]
                        [{"n":"suction","u":"Pa","t":-6,"v":2}]
                        [{"n":"suction","u":"Pa","t":1.7e9,"v":3}]
                        [{"n":"suction","u":"Pa","t":-1e300,"v":4}]
                        [{"n":"suction","u":"Pa","t":1799999999,"v":5}]
                        """, SUCTION))
                .containsExactly(
                        new ProbeSample(1, "1 Pa(g)", 6_000_000_000L), new ProbeSample(5, "5 Pa(g)", 9_000_000_000L));
    }

    @Test
    void anEndlessLineTakesNoMoreMemoryThanALine() throws Exception {
        assertThat(read("x".repeat(1_000_000) + "\n[{\"n\":\"suction\",\"u\":\"Pa\",\"v\":1}]\n", SUCTION))
                .hasSize(1);
    }

    @Test
    void noBytesWhateverEndTheReading() throws Exception {
        SenmlLink link = link("", SUCTION);
        Random random = new Random(11);
        byte[] whole = "[{\"n\":\"suction\",\"u\":\"Pa\",\"v\":813581}]\n".getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 200_000; i++) {
            byte[] line = whole.clone();
            line[random.nextInt(line.length)] = (byte) random.nextInt(256);
            for (byte each : random.nextInt(3) == 0 ? line : whole) {
                link.take(each & 0xff);
            }
        }
        assertThat(samples).as("seed 11").hasSizeGreaterThan(100_000);
    }
}
