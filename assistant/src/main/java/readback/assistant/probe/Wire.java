package readback.assistant.probe;

import java.util.function.Function;

/** What an instrument is connected by. */
sealed interface Wire {

    /** For the user: what it is. */
    String name();

    /** What is made of the wire, by the function for its kind. */
    <T> T fold(Function<StandardInput, T> standardInput, Function<Tcp, T> tcp, Function<Serial, T> serial);

    /** Whether it belongs to the program, which cannot open it anew. */
    default boolean lent() {
        return false;
    }

    /** The standard input of the program. */
    record StandardInput() implements Wire {
        @Override
        public String name() {
            return "standard input";
        }

        @Override
        public <T> T fold(Function<StandardInput, T> standardInput, Function<Tcp, T> tcp, Function<Serial, T> serial) {
            return standardInput.apply(this);
        }

        @Override
        public boolean lent() {
            return true;
        }
    }

    /** A connection that Readback makes. */
    record Tcp(String host, int port) implements Wire {
        @Override
        public String name() {
            return host + ":" + port;
        }

        @Override
        public <T> T fold(Function<StandardInput, T> standardInput, Function<Tcp, T> tcp, Function<Serial, T> serial) {
            return tcp.apply(this);
        }
    }

    /**
     * A serial port.
     *
     * @param port as the system names it
     * @param parity N, E or O
     */
    record Serial(String port, int baud, int dataBits, char parity, int stopBits) implements Wire {
        @Override
        public String name() {
            return port;
        }

        @Override
        public <T> T fold(Function<StandardInput, T> standardInput, Function<Tcp, T> tcp, Function<Serial, T> serial) {
            return serial.apply(this);
        }
    }
}
