package readback.assistant.probe;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** The wires that lines can come by. */
final class LineSources {

    private static final Duration PATIENCE = Duration.ofSeconds(3);

    private LineSources() {}

    /** @param standardInput what a wire of that name reads */
    static LineSource of(Wire wire, InputStream standardInput) {
        return wire.fold(lent -> new Borrowed(standardInput), OverTcp::new, OverSerial::new);
    }

    /** What somebody else opened and closes. */
    private record Borrowed(InputStream in) implements LineSource {
        @Override
        public InputStream open() {
            return in;
        }

        @Override
        public void close() {
            // belongs to the program
        }
    }

    private static final class OverTcp implements LineSource {

        private final Wire.Tcp address;
        private @Nullable Socket socket;

        OverTcp(Wire.Tcp address) {
            this.address = address;
        }

        @Override
        public InputStream open() throws IOException {
            Socket opened = new Socket();
            synchronized (this) {
                socket = opened;
            }
            opened.connect(new InetSocketAddress(address.host(), address.port()), (int) PATIENCE.toMillis());
            return new BufferedInputStream(opened.getInputStream());
        }

        @Override
        public synchronized void close() {
            Socket open = socket;
            socket = null;
            if (open != null) {
                try {
                    open.close();
                } catch (IOException e) {
                    // it is given up anyhow
                }
            }
        }
    }

    private static final class OverSerial implements LineSource {

        private final Wire.Serial wire;
        private @Nullable SerialPort port;

        OverSerial(Wire.Serial wire) {
            this.wire = wire;
        }

        @Override
        public InputStream open() throws IOException {
            try {
                SerialPort opened = SerialPort.getCommPort(wire.port());
                opened.setComPortParameters(
                        wire.baud(), wire.dataBits(), SerialPorts.stopBits(wire), SerialPorts.parity(wire));
                opened.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 0, 0);
                if (!opened.openPort()) {
                    throw new IOException(
                            "the port " + wire.port() + " does not open: error " + opened.getLastErrorCode());
                }
                synchronized (this) {
                    port = opened;
                }
                return opened.getInputStream();
            } catch (SerialPortInvalidPortException e) {
                throw new IOException("there is no port " + wire.port(), e);
            }
        }

        @Override
        public synchronized void close() {
            SerialPort open = port;
            port = null;
            if (open != null) {
                open.closePort();
            }
        }
    }
}
