package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.ProbeReport.Quality;
import readback.assistant.dialogue.ProbeValue;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

class ProbeWatchTest {

    private static final Instant NOON = Instant.parse("2026-07-14T12:00:00Z");

    private long nanos;
    private AbsolutePressure air = Atmosphere.SEA_LEVEL;
    private UnitSetting units = UnitSetting.US;

    private ProbeWatch watch(ProbeMapping mapping) {
        return new ProbeWatch(mapping, () -> nanos);
    }

    private Optional<Event.Measured> poll(ProbeWatch watch) {
        return watch.poll(NOON.plusNanos(nanos), air, units);
    }

    private void passes(Duration time) {
        nanos += time.toNanos();
    }

    private void feed(ProbeWatch watch, Channel channel, double base, int seconds) {
        for (int i = 0; i < seconds; i++) {
            passes(Duration.ofSeconds(1));
            watch.arrived(channel, new ProbeSample(base, "raw " + base, nanos));
        }
    }

    private static List<Quality> qualities(Optional<Event.Measured> event) {
        return event.stream()
                .flatMap(each -> each.reports().stream())
                .map(ProbeReport::quality)
                .toList();
    }

    @Test
    void whatChangesIsToldOnce() throws MappingException {
        ProbeMapping mapping = ProbeMappingTest.mapping(ProbeMappingTest.GAUGE);
        Channel gauge = mapping.channels().get(0);
        ProbeWatch watch = watch(mapping);

        assertThat(poll(watch)).isEmpty();
        feed(watch, gauge, 915_000, 1);
        assertThat(qualities(poll(watch))).containsExactly(Quality.CHANGING);
        feed(watch, gauge, 915_000, 30);
        assertThat(poll(watch)).isEmpty();
        feed(watch, gauge, 915_000, 30);
        assertThat(qualities(poll(watch))).containsExactly(Quality.STEADY);
        feed(watch, gauge, 915_000, 30);
        assertThat(poll(watch)).isEmpty();
        passes(Duration.ofSeconds(6));
        assertThat(qualities(poll(watch))).containsExactly(Quality.STALE);
        passes(Duration.ofSeconds(60));
        assertThat(poll(watch)).isEmpty();
    }

    @Test
    void aSteadyValueIsToldAgainWhenItWentHalfAPsi() throws MappingException {
        ProbeMapping mapping = ProbeMappingTest.mapping(ProbeMappingTest.GAUGE);
        Channel gauge = mapping.channels().get(0);
        ProbeWatch watch = watch(mapping);
        feed(watch, gauge, 915_000, 61);
        poll(watch);

        feed(watch, gauge, 915_000 + 0.3 * 6894.757, 1);
        assertThat(poll(watch)).isEmpty();
        feed(watch, gauge, 915_000 + 0.6 * 6894.757, 1);
        assertThat(qualities(poll(watch))).containsExactly(Quality.STEADY);
    }

    /** 915,000 Pa above a vacuum less 101,325 Pa of air are 813,675 Pa, 118.0 psi. */
    @Test
    void absoluteBecomesGaugeByTheAirOfTheSite() throws MappingException {
        ProbeMapping mapping = ProbeMappingTest.mapping(ProbeMappingTest.GAUGE);
        ProbeWatch watch = watch(mapping);
        feed(watch, mapping.channels().get(0), 915_000, 1);
        poll(watch);
        assertThat(watch.live().get(0).value())
                .contains(new ProbeValue(new BigDecimal("118.0"), Unit.PSIG, "raw 915000.0", NOON.plusSeconds(1)));

        // at 5,000 ft the air has 12.2 psi, 2.5 less: U.S. Standard Atmosphere 1976, 84,307 Pa
        air = Atmosphere.atAltitude(1524);
        poll(watch);
        assertThat(watch.live().get(0).value().orElseThrow().value()).isEqualByComparingTo("120.5");

        units = UnitSetting.METRIC;
        air = Atmosphere.SEA_LEVEL;
        poll(watch);
        assertThat(watch.live().get(0).value().orElseThrow().value()).isEqualByComparingTo("8.14");
    }

    @Test
    void aConnectionThatBreaksInTheMiddleIsToldAndComesBack() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            ProbeMapping mapping = ProbeMappingTest.mapping(
                    "[clamp]\nfrom = senml tcp 127.0.0.1:" + server.getLocalPort() + "\ngives = temperature\n");
            try (ProbeWatch watch = ProbeWatch.of(mapping, InputStream.nullInputStream())) {
                CountDownLatch seen = serveUntilSeen(server);
                assertThat(await(watch, Quality.CHANGING)).isTrue();
                seen.countDown();
                assertThat(await(watch, Quality.LOST)).isTrue();
                assertThat(watch.troubles()).containsExactly("what sends the values ended");
                serveUntilSeen(server);
                assertThat(await(watch, Quality.CHANGING)).isTrue();
            }
        }
    }

    /** One value, and half of another; hangs up when told to. */
    private static CountDownLatch serveUntilSeen(ServerSocket server) {
        CountDownLatch seen = new CountDownLatch(1);
        Thread serving = new Thread(() -> {
            try (Socket socket = server.accept();
                    OutputStream out = socket.getOutputStream()) {
                out.write(
                        "[{\"n\":\"clamp\",\"u\":\"Cel\",\"v\":16.7}]\n[{\"n\":\"cla".getBytes(StandardCharsets.UTF_8));
                out.flush();
                seen.await();
            } catch (IOException | InterruptedException e) {
                // the test is over
            }
        });
        serving.setDaemon(true);
        serving.start();
        return seen;
    }

    @Test
    @Timeout(20)
    void whereNothingListensItIsLost() throws Exception {
        ProbeMapping mapping =
                ProbeMappingTest.mapping(ProbeMappingTest.GAUGE.replace(":1502", ":" + ModbusLinkTest.freePort()));
        try (ProbeWatch watch = ProbeWatch.of(mapping, InputStream.nullInputStream())) {
            assertThat(await(watch, Quality.LOST)).isTrue();
        }
    }

    @Test
    void theStandardInputEndsForGood() throws Exception {
        ProbeMapping mapping = ProbeMappingTest.mapping("[clamp]\nfrom = senml stdin\ngives = temperature\n");
        try (ProbeWatch watch = ProbeWatch.of(mapping, InputStream.nullInputStream())) {
            assertThat(await(watch, Quality.LOST)).isTrue();
        }
    }

    /** Whether a report of this quality is told within ten seconds. */
    static boolean await(ProbeWatch watch, Quality wanted) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        while (System.nanoTime() - end < 0) {
            Optional<Event.Measured> told = watch.poll(NOON, Atmosphere.SEA_LEVEL, UnitSetting.US);
            if (qualities(told).contains(wanted)) {
                return true;
            }
            TimeUnit.MILLISECONDS.sleep(20);
        }
        return false;
    }
}
