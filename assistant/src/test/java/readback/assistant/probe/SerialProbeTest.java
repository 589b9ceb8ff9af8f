package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.ghgande.j2mod.modbus.Modbus;
import com.ghgande.j2mod.modbus.procimg.SimpleInputRegister;
import com.ghgande.j2mod.modbus.procimg.SimpleProcessImage;
import com.ghgande.j2mod.modbus.slave.ModbusSlave;
import com.ghgande.j2mod.modbus.slave.ModbusSlaveFactory;
import com.ghgande.j2mod.modbus.util.SerialParameters;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.ProbeReport.Quality;

/** Serial ports, played by a pair of pseudo-terminals: needs the program socat, without which these are skipped. */
@Timeout(60)
class SerialProbeTest {

    @TempDir
    Path folder;

    private Process pair;

    @BeforeEach
    void connect() throws Exception {
        assumeTrue(
                Files.isExecutable(Path.of("/usr/bin/socat")),
                "there is no socat: install it, and serial ports are tested too");
        pair = new ProcessBuilder(
                        "socat", "pty,raw,echo=0,link=" + port("instrument"), "pty,raw,echo=0,link=" + port("tablet"))
                .redirectErrorStream(true)
                .start();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        while (!(Files.exists(port("instrument")) && Files.exists(port("tablet"))) && System.nanoTime() - end < 0) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }

    @AfterEach
    void unplug() throws InterruptedException {
        if (pair != null) {
            pair.destroy();
            pair.waitFor();
        }
    }

    private Path port(String name) {
        return folder.resolve(name);
    }

    @Test
    void linesOfSenmlComeByASerialPortUntilItIsPulled() throws Exception {
        ProbeMapping mapping = ProbeMappingTest.mapping(
                "[clamp]\nfrom = senml serial " + port("tablet") + " 115200 8N1\ngives = temperature\n");
        try (ProbeWatch watch = ProbeWatch.of(mapping, InputStream.nullInputStream())) {
            Thread sending = new Thread(this::send);
            sending.setDaemon(true);
            sending.start();
            assertThat(ProbeWatchTest.await(watch, Quality.CHANGING)).isTrue();
            assertThat(watch.live().get(0).value().orElseThrow().raw()).isEqualTo("16.7 Cel");
            unplug();
            assertThat(ProbeWatchTest.await(watch, Quality.LOST)).isTrue();
        }
    }

    private void send() {
        try {
            while (pair.isAlive()) {
                Files.writeString(
                        port("instrument"), "[{\"n\":\"clamp\",\"u\":\"Cel\",\"v\":16.7}]\n", StandardOpenOption.WRITE);
                TimeUnit.MILLISECONDS.sleep(200);
            }
        } catch (IOException | InterruptedException e) {
            // pulled
        }
    }

    @Test
    void registersComeByModbusRtu() throws Exception {
        SerialParameters parameters = new SerialParameters();
        parameters.setPortName(port("instrument").toString());
        parameters.setBaudRate(19_200);
        parameters.setEncoding(Modbus.SERIAL_ENCODING_RTU);
        ModbusSlave slave = ModbusSlaveFactory.createSerialSlave(parameters);
        SimpleProcessImage image = new SimpleProcessImage(5);
        image.addInputRegister(0, new SimpleInputRegister(0x42ed));
        image.addInputRegister(1, new SimpleInputRegister(0x0000));
        slave.addProcessImage(5, image);
        slave.open();
        ProbeMapping mapping = ProbeMappingTest.mapping(ProbeMappingTest.GAUGE
                .replace("tcp 127.0.0.1:1502", "serial " + port("tablet") + " 19200 8N1")
                .replace("unit-id = 1", "unit-id = 5")
                .replace("unit = Pa", "unit = psi")
                .replace("absolute", "gauge"));
        try (ProbeWatch watch = ProbeWatch.of(mapping, InputStream.nullInputStream())) {
            assertThat(ProbeWatchTest.await(watch, Quality.CHANGING))
                    .as(() -> String.join("; ", List.copyOf(watch.troubles())))
                    .isTrue();
            assertThat(watch.live().get(0).value().orElseThrow().raw()).isEqualTo("42ed 0000 = 118.5 psi(g)");
        } finally {
            ModbusSlaveFactory.close(slave);
        }
    }
}
