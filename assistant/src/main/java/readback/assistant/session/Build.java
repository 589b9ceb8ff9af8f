package readback.assistant.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** What was built: the version, and the commit where the build was told one. */
public record Build(String version, String commit) {

    /** What the build writes when nobody tells it the commit. */
    static final String UNKNOWN_COMMIT = "unknown commit";

    /** This program's build, as Maven wrote it into the resources. */
    public static Build ofThisProgram() {
        try (InputStream in = Build.class.getResourceAsStream("build.properties")) {
            if (in == null) {
                throw new IllegalStateException("the installation lacks build.properties");
            }
            Properties written = new Properties();
            written.load(in);
            return new Build(written.getProperty("version", ""), written.getProperty("commit", ""));
        } catch (IOException e) {
            throw new UncheckedIOException("the installation cannot be read", e);
        }
    }

    /** The name for records and people, as "0.1.0" or "0.1.0 (1a2b3c4d5e6f)". */
    public String name() {
        return commit.equals(UNKNOWN_COMMIT) ? version : version + " (" + commit + ")";
    }
}
