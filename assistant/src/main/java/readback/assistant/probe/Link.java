package readback.assistant.probe;

import java.io.IOException;

/** A connection to an instrument. Opened, used and closed by one thread; {@link #close} may come from any. */
interface Link extends AutoCloseable {

    /** Makes the connection. */
    void open() throws IOException;

    /** Takes what comes next, or asks for it once; returns within a few seconds. */
    void next() throws IOException;

    @Override
    void close();
}
