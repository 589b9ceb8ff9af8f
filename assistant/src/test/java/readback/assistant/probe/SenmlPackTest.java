package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Packs of RFC 8428, section 5.1, resolved as its section 4.6 says; the examples are quoted from memory. */
class SenmlPackTest {

    private static List<SenmlPack.Item> items(String pack) {
        return SenmlPack.read(pack).orElseThrow();
    }

    private static SenmlPack.Item item(String name, String unit, String value, double time) {
        return new SenmlPack.Item(name, Optional.of(unit), new BigDecimal(value), time);
    }

    @Test
    void singleDatapoint() {
        assertThat(items("[{\"n\":\"urn:dev:ow:10e2073a01080063\",\"u\":\"Cel\",\"v\":23.1}]"))
                .containsExactly(item("urn:dev:ow:10e2073a01080063", "Cel", "23.1", 0));
    }

    @Test
    void multipleDatapoints() {
        assertThat(items("[{\"bn\":\"urn:dev:ow:10e2073a01080063:\",\"n\":\"voltage\",\"u\":\"V\",\"v\":120.1},"
                        + "{\"n\":\"current\",\"u\":\"A\",\"v\":1.2}]"))
                .containsExactly(
                        item("urn:dev:ow:10e2073a01080063:voltage", "V", "120.1", 0),
                        item("urn:dev:ow:10e2073a01080063:current", "A", "1.2", 0));
    }

    @Test
    void baseTimeAndBaseUnitCountForEveryRecordThatSaysNothingElse() {
        List<SenmlPack.Item> items = items("[{\"bn\":\"urn:dev:ow:10e2073a0108006:\",\"bt\":1.276020076001e+09,"
                + "\"bu\":\"A\",\"bver\":5,\"n\":\"voltage\",\"u\":\"V\",\"v\":120.1},"
                + "{\"n\":\"current\",\"t\":-5,\"v\":1.2},{\"n\":\"current\",\"t\":-4,\"v\":1.3},"
                + "{\"n\":\"current\",\"v\":1.7}]");

        assertThat(items)
                .extracting(SenmlPack.Item::name)
                .containsExactly(
                        "urn:dev:ow:10e2073a0108006:voltage",
                        "urn:dev:ow:10e2073a0108006:current",
                        "urn:dev:ow:10e2073a0108006:current",
                        "urn:dev:ow:10e2073a0108006:current");
        assertThat(items).extracting(each -> each.unit().orElseThrow()).containsExactly("V", "A", "A", "A");
        assertThat(items.get(0).time()).isEqualTo(1276020076.001);
        assertThat(items.get(1).time()).isCloseTo(1276020071.001, within(1e-6));
        assertThat(items.get(3).time()).isEqualTo(1276020076.001);
    }

    @Test
    void aBaseNameAloneIsAName() {
        assertThat(items("[{\"bn\":\"urn:dev:ow:10e2073a01080063\",\"bt\":1.320067464e+09,\"bu\":\"%RH\",\"v\":20},"
                        + "{\"u\":\"lon\",\"v\":24.30621},{\"t\":60,\"v\":20.3}]"))
                .containsExactly(
                        item("urn:dev:ow:10e2073a01080063", "%RH", "20", 1.320067464e9),
                        item("urn:dev:ow:10e2073a01080063", "lon", "24.30621", 1.320067464e9),
                        item("urn:dev:ow:10e2073a01080063", "%RH", "20.3", 1.320067524e9));
    }

    @Test
    void aBaseValueIsAddedAndCountsAlone() {
        assertThat(items("[{\"bn\":\"a\",\"bu\":\"Pa\",\"bv\":900000,\"v\":15000},{\"n\":\"b\"}]"))
                .containsExactly(item("a", "Pa", "915000", 0), item("ab", "Pa", "900000", 0));
    }

    @Test
    void otherKindsOfValuesArePassedOver() {
        assertThat(items("[{\"n\":\"a\",\"vb\":true},{\"n\":\"a\",\"vs\":\"x\"},{\"n\":\"a\",\"vd\":\"QQ\"},"
                        + "{\"n\":\"a\",\"s\":3},{\"n\":\"a\",\"u\":\"K\",\"v\":1}]"))
                .containsExactly(item("a", "K", "1", 0));
    }

    @Test
    void timesBelowTwoToThe28AreRelativeToNow() {
        assertThat(item("a", "K", "1", -30).age(1.7e9)).isEqualTo(30);
        assertThat(item("a", "K", "1", 0).age(1.7e9)).isZero();
        assertThat(item("a", "K", "1", 10).age(1.7e9)).isZero();
        assertThat(item("a", "K", "1", 1.7e9 - 4).age(1.7e9)).isEqualTo(4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "{}",
                "[1]",
                "[{\"n\":\"a\",\"v\":1",
                "[{\"v\":1}]",
                "[{\"n\":\"-a\",\"v\":1}]",
                "[{\"n\":\"a b\",\"v\":1}]",
                "[{\"n\":\"a\",\"v\":\"1\"}]",
                "[{\"n\":\"a\",\"v\":1,\"must_\":1}]",
                "[{\"n\":\"a\",\"bver\":11,\"v\":1}]",
                "[{\"n\":\"a\",\"v\":1e999999999}]",
                "[{\"n\":\"a\",\"v\":123456789012345678901234567890}]",
                "[{\"n\":\"a\",\"v\":NaN}]"
            })
    void whatIsNoPackOfThisVersionSaysNothing(String line) {
        assertThat(SenmlPack.read(line)).isEmpty();
    }

    /** A line feed in the wrong place, a cable half in its plug: nothing of that may end the program. */
    @Test
    void noLineWhateverMakesItFail() {
        Random random = new Random(8428);
        String pack =
                "[{\"bn\":\"x:\",\"bt\":-1,\"bu\":\"Pa\",\"bv\":1e3,\"n\":\"a\",\"u\":\"Cel\",\"v\":23.1},{\"t\":-5}]";
        int read = 0;
        for (int i = 0; i < 300_000; i++) {
            byte[] line = pack.getBytes(StandardCharsets.UTF_8);
            int wounds = random.nextInt(4);
            for (int wound = 0; wound < wounds; wound++) {
                line[random.nextInt(line.length)] = (byte) random.nextInt(256);
            }
            int from = random.nextInt(4) == 0 ? random.nextInt(line.length) : 0;
            int to = random.nextInt(4) == 0 ? from + random.nextInt(line.length - from) : line.length;
            Optional<List<SenmlPack.Item>> items =
                    SenmlPack.read(new String(line, from, to - from, StandardCharsets.UTF_8));
            read += items.map(List::size).orElse(0);
        }
        assertThat(read).as("seed 8428").isPositive();
    }
}
