package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ghgande.j2mod.modbus.ModbusException;
import com.ghgande.j2mod.modbus.procimg.SimpleInputRegister;
import com.ghgande.j2mod.modbus.procimg.SimpleProcessImage;
import com.ghgande.j2mod.modbus.procimg.SimpleRegister;
import com.ghgande.j2mod.modbus.slave.ModbusSlave;
import com.ghgande.j2mod.modbus.slave.ModbusSlaveFactory;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Against the library's own slave, and against a unit that answers with any bytes. */
class ModbusLinkTest {

    private static final HexFormat HEX = HexFormat.of();

    private final List<ProbeSample> samples = new ArrayList<>();

    private static String channel(int port, String lines) {
        return "[c]\nfrom = modbus tcp 127.0.0.1:" + port + "\n" + lines;
    }

    private ModbusLink link(String mapping) throws MappingException {
        List<Channel> channels = ProbeMappingTest.mapping(mapping).channels();
        return new ModbusLink(
                channels.get(0).wire(), channels, (channel, sample) -> samples.add(sample), () -> 7, Duration.ZERO);
    }

    static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    static ModbusSlave slave(int port, int unit, SimpleProcessImage image) throws ModbusException {
        ModbusSlave slave = ModbusSlaveFactory.createTCPSlave(InetAddress.getLoopbackAddress(), port, 2, false);
        slave.addProcessImage(unit, image);
        slave.open();
        return slave;
    }

    @Test
    void registersOfAUnitBecomeANumberWithWhatItCameFrom() throws Exception {
        int port = freePort();
        SimpleProcessImage image = new SimpleProcessImage(3);
        image.addInputRegister(0, new SimpleInputRegister(0x42ed));
        image.addInputRegister(1, new SimpleInputRegister(0x0000));
        image.addRegister(0, new SimpleRegister(0xff9c));
        ModbusSlave slave = slave(port, 3, image);
        try (ModbusLink link = link(channel(port, """
                        unit-id = 3
                        function = 4
                        register = 0
                        type = float32
                        word-order = high-first
                        unit = psi
                        pressure = gauge
                        """) + channel(port, """
                        unit-id = 3
                        function = 3
                        register = 0
                        type = int16
                        scale = 0.1
                        unit = Cel
                        """).replace("[c]", "[d]"))) {
            link.open();
            link.next();
        } finally {
            ModbusSlaveFactory.close(slave);
        }

        assertThat(samples)
                .containsExactly(
                        new ProbeSample(118.5 * 6894.757293168, "42ed 0000 = 118.5 psi(g)", 7),
                        new ProbeSample(263.15, "ff9c = -10.0 Cel", 7));
    }

    @Test
    void aRegisterThatTheUnitDoesNotHaveGivesNoValueAndKeepsTheConnection() throws Exception {
        int port = freePort();
        ModbusSlave slave = slave(port, 1, new SimpleProcessImage(1));
        try (ModbusLink link = link(channel(port, """
                unit-id = 1
                function = 4
                register = 40
                type = int16
                unit = Cel
                """))) {
            link.open();
            link.next();
            link.next();
        } finally {
            ModbusSlaveFactory.close(slave);
        }
        assertThat(samples).isEmpty();
    }

    @Test
    void whereNobodyAnswersOneSentenceSaysSo() throws Exception {
        try (ModbusLink link = link(channel(freePort(), """
                unit-id = 1
                function = 4
                register = 8
                type = int16
                unit = Cel
                """))) {
            assertThatThrownBy(link::open)
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("no connection to 127.0.0.1:");
        }
    }

    /** A unit that answers each request as it is told to. */
    private static final class AnyUnit implements AutoCloseable {
        private final ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        private final BlockingQueue<String> requests = new LinkedBlockingQueue<>();

        /** @param answers bytes for each request, none to hang up */
        AnyUnit(Function<byte[], byte[]> answers) throws IOException {
            Thread thread = new Thread(() -> serve(answers), "any-unit");
            thread.setDaemon(true);
            thread.start();
        }

        private void serve(Function<byte[], byte[]> answers) {
            while (!server.isClosed()) {
                try (Socket socket = server.accept()) {
                    DataInputStream in = new DataInputStream(socket.getInputStream());
                    OutputStream out = socket.getOutputStream();
                    byte[] request = new byte[12];
                    while (true) {
                        in.readFully(request);
                        requests.add(HEX.formatHex(request));
                        byte[] answer = answers.apply(request);
                        out.write(answer);
                        out.flush();
                        if (answer.length < 9) {
                            break;
                        }
                    }
                } catch (IOException e) {
                    // the other side is done
                }
            }
        }

        int port() {
            return server.getLocalPort();
        }

        @Override
        public void close() throws IOException {
            server.close();
        }
    }

    /** Transaction and unit of the request before the rest of an answer. */
    private static byte[] answer(byte[] request, String pdu) {
        byte[] rest = HEX.parseHex(pdu);
        byte[] answer = new byte[7 + rest.length];
        System.arraycopy(request, 0, answer, 0, 4);
        answer[5] = (byte) (1 + rest.length);
        answer[6] = request[6];
        System.arraycopy(rest, 0, answer, 7, rest.length);
        return answer;
    }

    /** The example of Modbus Application Protocol V1.1b3, section 6.4: register 9 holds 10; from memory. */
    @Test
    void theRequestAndTheAnswerAreThoseOfTheSpecification() throws Exception {
        try (AnyUnit unit = new AnyUnit(request -> answer(request, "0402000a"));
                ModbusLink link = link(channel(unit.port(), """
                        unit-id = 17
                        function = 4
                        register = 8
                        type = uint16
                        unit = Cel
                        """))) {
            link.open();
            link.next();

            // transaction, protocol 0, six bytes follow, unit, function, address, count
            assertThat(unit.requests.take()).matches("[0-9a-f]{4}0000" + "0006" + "11" + "04" + "0008" + "0001");
        }
        assertThat(samples).extracting(ProbeSample::raw).containsExactly("000a = 10.0 Cel");
    }

    /** The example of section 6.3: registers 108 to 110 hold 555, 0 and 100; from memory. Two of them are read here. */
    @Test
    void holdingRegistersAreReadAsTheSpecificationHasThem() throws Exception {
        try (AnyUnit unit = new AnyUnit(request -> answer(request, "030400000064"));
                ModbusLink link = link(channel(unit.port(), """
                        unit-id = 17
                        function = 3
                        register = 108
                        type = uint32
                        word-order = high-first
                        unit = Cel
                        """))) {
            link.open();
            link.next();

            assertThat(unit.requests.take()).endsWith("1103006c0002");
        }
        assertThat(samples).extracting(ProbeSample::raw).containsExactly("0000 0064 = 100.0 Cel");
    }

    @Test
    void aFrameThatIsCutOffIsALostConnectionAndNoValue() throws Exception {
        try (AnyUnit unit = new AnyUnit(request -> HEX.parseHex("00010000"));
                ModbusLink link = link(channel(unit.port(), """
                        unit-id = 17
                        function = 4
                        register = 8
                        type = uint16
                        unit = Cel
                        """))) {
            link.open();
            assertThatThrownBy(link::next).isInstanceOf(IOException.class);
        }
        assertThat(samples).isEmpty();
    }

    /**
     * Random bytes behind a header that lets the answer be read to its end: at most the connection is lost, and what is
     * taken for an answer is one to the question. Few, because the library rests after a frame that it refuses;
     * hundreds of thousands of registers and lines stand in the tests of what makes numbers of them.
     */
    @Test
    @SuppressWarnings("try") // a lost link is closed and opened again, as its thread does
    void noFrameWhateverEndsTheReading() throws Exception {
        Random random = new Random(502);
        int frames = 100;
        int lost = 0;
        try (AnyUnit unit = new AnyUnit(request -> {
                    byte[] noise = new byte[4 + random.nextInt(8)];
                    random.nextBytes(noise);
                    if (random.nextBoolean()) {
                        noise[0] = 4;
                    }
                    if (random.nextBoolean()) {
                        noise[1] = 2;
                    }
                    return answer(request, HEX.formatHex(noise));
                });
                ModbusLink link = link(channel(unit.port(), """
                        unit-id = 17
                        function = 4
                        register = 8
                        type = uint16
                        unit = Cel
                        """))) {
            link.open();
            for (int i = 0; i < frames; i++) {
                try {
                    link.next();
                } catch (IOException | RuntimeException e) {
                    // as in the thread that keeps the link: opened again
                    lost++;
                    link.close();
                    link.open();
                }
            }
        }
        assertThat(samples).as("seed 502").isNotEmpty();
        assertThat(lost + samples.size()).isLessThanOrEqualTo(2 * frames);
    }
}
