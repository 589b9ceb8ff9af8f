package readback.assistant.command;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;

/**
 * In what encoding plain lines go to a stream: UTF-8, but to a console of Windows its code page, which would show the
 * bytes of UTF-8 as other characters.
 */
final class ConsoleEncoding {

    private ConsoleEncoding() {}

    /** Of standard input and output in this process. */
    static Charset ofOutput() {
        return of(System.getProperties(), "stdout");
    }

    /** Of standard error. */
    static Charset ofErrors() {
        return of(System.getProperties(), "stderr");
    }

    /**
     * @param properties of the Java virtual machine; it tells the code page of a console, and nothing for a pipe or a
     *     file, under names of its own
     * @param stream stdout or stderr
     */
    static Charset of(Properties properties, String stream) {
        if (!properties.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows")) {
            return StandardCharsets.UTF_8;
        }
        String told = properties.getProperty("sun." + stream + ".encoding", "");
        return !told.isEmpty() && Charset.isSupported(told) ? Charset.forName(told) : StandardCharsets.UTF_8;
    }

    /** The text with the few signs that a code page lacks put otherwise. */
    static String plain(String text, Charset charset) {
        if (charset.equals(StandardCharsets.UTF_8) || charset.newEncoder().canEncode(text)) {
            return text;
        }
        return text.replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u2014', '-')
                .replace("\u2026", "...");
    }
}
