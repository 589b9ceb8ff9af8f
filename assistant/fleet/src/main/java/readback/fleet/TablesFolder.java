package readback.fleet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Optional;
import java.util.UUID;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.SparkSession;

/**
 * A folder of tables, with a file {@code about.json} that says what they are. It is made beside its place and moved
 * there whole, so that whoever reads it finds the old tables or the new ones.
 */
final class TablesFolder {

    private static final String ABOUT = "about.json";
    private static final ObjectMapper JSON = new ObjectMapper();

    private final FileSystem files;
    private final Path place;

    /**
     * What tables are.
     *
     * @param sessions rows of the table of sessions
     * @param damaged of these, records that do not hold
     * @param forked of these, sessions that go on in two ways
     * @param latest when the last one began, ISO 8601 in UTC
     * @param names "plain", or "hmac-sha-256" where pseudonyms stand for people, places and equipment
     * @param key a mark of the key of the pseudonyms; empty without
     */
    record About(long sessions, long damaged, long forked, String latest, String names, String key) {

        static final String PLAIN = "plain";
        static final String HASHED = "hmac-sha-256";

        boolean hashed() {
            return names.equals(HASHED);
        }
    }

    /** Writes tables below a folder and says what they are. */
    interface Making {
        About in(String folder) throws IOException;
    }

    /** @throws FleetFailure for a place that the engine cannot reach */
    TablesFolder(SparkSession engine, String place) {
        try {
            Path named = new Path(place);
            this.files = named.getFileSystem(engine.sparkContext().hadoopConfiguration());
            this.place = files.makeQualified(named);
        } catch (IOException | IllegalArgumentException e) {
            throw new FleetFailure("'" + place + "' cannot be reached (" + e.getMessage() + ").", e);
        }
    }

    /**
     * Refuses a place where something else lies.
     *
     * @throws FleetFailure where tables must not or cannot be written
     */
    void mustBeWritable() {
        try {
            if (files.exists(place)) {
                if (files.getFileStatus(place).isFile()) {
                    throw new FleetFailure("'" + shown() + "' is a file: name a folder for the tables.");
                }
                if (about().isEmpty() && files.listStatus(place).length > 0) {
                    throw new FleetFailure("'" + shown() + "' holds something else than tables: name another folder.");
                }
            }
            Path trial = beside("trial");
            if (!files.mkdirs(trial)) {
                throw new IOException("a folder could not be made there");
            }
            files.delete(trial, true);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /**
     * Puts new tables in the place of the old ones.
     *
     * @throws FleetFailure when they cannot be written; the old ones are left then
     */
    About replace(Making making) {
        Path part = beside("part");
        try {
            About about = making.in(part.toString());
            try (OutputStream out = files.create(new Path(part, ABOUT))) {
                out.write(JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(about));
            }
            Path old = beside("old");
            boolean replaces = files.exists(place);
            if (replaces && !files.rename(place, old)) {
                throw new IOException("the tables that are there could not be moved aside");
            }
            if (!files.rename(part, place)) {
                if (replaces && !files.rename(old, place)) {
                    throw new IOException("the tables that were there are in '" + old + "' now");
                }
                throw new IOException("the new tables could not be moved there");
            }
            if (replaces) {
                files.delete(old, true);
            }
            return about;
        } catch (IOException e) {
            throw unwritable(e);
        } finally {
            remove(part);
        }
    }

    private void remove(Path part) {
        try {
            files.delete(part, true);
        } catch (IOException e) {
            // what is left has a name that nobody reads
            return;
        }
    }

    private Path beside(String what) {
        return new Path(place.getParent(), "." + place.getName() + "." + what + "-" + UUID.randomUUID());
    }

    private FleetFailure unwritable(IOException e) {
        return new FleetFailure(
                "'" + shown() + "' cannot be written (" + e.getMessage()
                        + "): name a folder in a place that you may write to, with room for the tables.",
                e);
    }

    /** What the tables are; empty where there are none. */
    Optional<About> about() throws IOException {
        try (InputStream in = files.open(new Path(place, ABOUT))) {
            return Optional.of(JSON.readValue(in, About.class));
        } catch (FileNotFoundException e) {
            return Optional.empty();
        } catch (JsonProcessingException e) {
            throw new IOException("its " + ABOUT + " is none", e);
        }
    }

    /** Where a table lies. */
    String table(String name) {
        return new Path(place, name).toString();
    }

    private String shown() {
        return place.toUri().getPath();
    }

    @Override
    public String toString() {
        return shown();
    }
}
