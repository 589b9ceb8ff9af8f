package readback.assistant.voice;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The classes of the embedded voice, apart from those of the program; decision 0015.
 *
 * <p>The engine's jar was packed from multi-release jars without saying so: the classes meant for Java 9 and newer lie
 * in it, but the platform's loader would take the old ones, of which one of the logging library prints a warning to the
 * standard output. That library's newer classes are preferred here.
 */
final class VoiceJars extends URLClassLoader {
    private static final String LOGGING = "org.apache.logging.";
    private static final String NEWER = "META-INF/versions/9/";

    /** Its own settings would write a log into the folder that the user happens to work in. */
    private static final String LOG_SETTINGS = "marytts/util/log4j.properties";

    VoiceJars(URL[] jars) {
        super("voice", jars, ClassLoader.getPlatformClassLoader());
    }

    @Override
    public @Nullable InputStream getResourceAsStream(String name) {
        if (name.equals(LOG_SETTINGS)) {
            return new ByteArrayInputStream("log4j.rootLogger = OFF\n".getBytes(StandardCharsets.US_ASCII));
        }
        return super.getResourceAsStream(name);
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        @Nullable URL newer = !name.startsWith(LOGGING) ? null : findResource(NEWER + name.replace('.', '/') + ".class");
        if (newer == null) {
            return super.findClass(name);
        }
        try (InputStream in = newer.openStream()) {
            byte[] code = in.readAllBytes();
            return defineClass(name, code, 0, code.length);
        } catch (IOException damaged) {
            throw new UncheckedIOException("The jar of the embedded voice is damaged.", damaged);
        }
    }
}
