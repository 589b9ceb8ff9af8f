package readback.assistant.probe;

import java.io.IOException;
import java.io.InputStream;

/** Where lines of bytes come from. */
interface LineSource {

    /** Opens it anew. Reading from what it gives blocks, and ends or fails when the source is closed. */
    InputStream open() throws IOException;

    /** Closes what was opened last; any thread. */
    void close();
}
