package readback.assistant.probe;

/** What an instrument is connected by. */
sealed interface Wire {

    /** For the user: what it is. */
    String name();

    /** The standard input of the program. */
    record StandardInput() implements Wire {
        @Override
        public String name() {
            return "standard input";
        }
    }

    /** A connection that Readback makes. */
    record Tcp(String host, int port) implements Wire {
        @Override
        public String name() {
            return host + ":" + port;
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
    }
}
