package readback.assistant.command;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import readback.assistant.replay.Visible;

/**
 * Prints texts so that nothing in them acts on a terminal, whoever wrote them into a record: line ends and tabs stay,
 * every other control character and every change of writing direction is made visible. The one place through which all
 * plain output goes.
 */
final class VisibleStream extends PrintStream {

    private final Charset encoding;

    /**
     * @param out gets what is printed
     * @param encoding in this encoding
     */
    VisibleStream(OutputStream out, Charset encoding) {
        super(out, true, encoding);
        this.encoding = encoding;
    }

    @Override
    public void print(String text) {
        super.print(ConsoleEncoding.plain(Visible.lines(String.valueOf(text)), encoding));
    }

    @Override
    public void print(char c) {
        print(String.valueOf(c));
    }

    @Override
    public void print(char[] text) {
        print(new String(text));
    }

    @Override
    public void print(Object thing) {
        print(String.valueOf(thing));
    }
}
