package readback.assistant.report;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Driver;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * Exported lines as a Parquet file, a row a session, its readings, verdicts and movements in lists. Written by DuckDB,
 * whose JDBC driver is an optional jar: it lies on the class path or in the folder of the program's libraries. Decision
 * 0002.
 */
public final class ParquetExport {

    /** How the optional jar is named. */
    public static final String JAR = "duckdb_jdbc-*.jar";

    private static final String DRIVER = "org.duckdb.DuckDBDriver";

    private static final String FIGURES =
            "STRUCT(name VARCHAR, value DOUBLE, unit VARCHAR, si DOUBLE, si_unit VARCHAR)[]";

    /** The fields of {@link SessionExport#line} with their types; a file's columns do not depend on what was said. */
    private static final String COLUMNS = String.join(
            ", ",
            "session: 'VARCHAR'",
            "started: 'TIMESTAMPTZ'",
            "zone: 'VARCHAR'",
            "minutes: 'DOUBLE'",
            "refrigerant: 'VARCHAR'",
            "metering_device: 'VARCHAR'",
            "technician: 'VARCHAR'",
            "appliance: 'VARCHAR'",
            "place: 'VARCHAR'",
            "customer: 'VARCHAR'",
            "tablet: 'VARCHAR'",
            "practice: 'VARCHAR'",
            "full_charge_kg: 'DOUBLE'",
            "verdict: 'VARCHAR'",
            "borderline: 'BOOLEAN'",
            "charge: 'VARCHAR'",
            "outcomes: 'STRUCT(judged VARCHAR, verdict VARCHAR, borderline BOOLEAN, figures " + FIGURES + ")[]'",
            "doubts: 'INTEGER'",
            "cautions: 'VARCHAR[]'",
            "added_kg: 'DOUBLE'",
            "recovered_kg: 'DOUBLE'",
            "cylinders: 'STRUCT(cylinder VARCHAR, added_kg DOUBLE, recovered_kg DOUBLE)[]'",
            "leak_test: 'VARCHAR'",
            "work: 'VARCHAR[]'",
            "events: 'INTEGER'",
            "closed: 'BOOLEAN'",
            "hash: 'VARCHAR'",
            "fault: 'VARCHAR'",
            "readings: 'STRUCT(event INTEGER, name VARCHAR, value DOUBLE, unit VARCHAR, si DOUBLE, si_unit VARCHAR)[]'",
            "verdicts: 'STRUCT(event INTEGER, \"at\" TIMESTAMPTZ, judged VARCHAR, verdict VARCHAR, line VARCHAR)[]'",
            "moves: 'STRUCT(event INTEGER, \"at\" TIMESTAMPTZ, direction VARCHAR, kg DOUBLE, cylinder VARCHAR)[]'");

    private final Driver driver;

    private ParquetExport(Driver driver) {
        this.driver = driver;
    }

    /**
     * The export with the driver on the class path, else with the latest in a folder.
     *
     * @param libraries the folder of the program's libraries; empty where it is not known
     * @return empty where there is no driver, or none that runs on this machine
     */
    public static Optional<ParquetExport> with(Optional<Path> libraries) {
        ClassLoader own = ParquetExport.class.getClassLoader();
        return driver(own)
                .or(() -> libraries
                        .flatMap(ParquetExport::jar)
                        .flatMap(jar -> driver(new URLClassLoader(new URL[] {jar}, own))))
                .map(ParquetExport::new);
    }

    private static Optional<Driver> driver(ClassLoader loader) {
        try {
            return Optional.of(Class.forName(DRIVER, true, loader)
                    .asSubclass(Driver.class)
                    .getDeclaredConstructor()
                    .newInstance());
        } catch (ReflectiveOperationException | LinkageError absent) {
            return Optional.empty();
        }
    }

    private static Optional<URL> jar(Path folder) {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> jars = Files.newDirectoryStream(folder, JAR)) {
            jars.forEach(found::add);
        } catch (IOException none) {
            return Optional.empty();
        }
        return found.stream().max(Comparator.naturalOrder()).map(ParquetExport::address);
    }

    private static URL address(Path jar) {
        try {
            return jar.toUri().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalArgumentException("'" + jar + "' has no address", e);
        }
    }

    /**
     * Writes the file, and returns it.
     *
     * @param lines a file of lines as {@link SessionExport#line} makes them
     * @param parquet where to write
     * @throws IOException when DuckDB could not write it
     */
    public Path write(Path lines, Path parquet) throws IOException {
        try (Connection engine = driver.connect("jdbc:duckdb:", new Properties());
                Statement sql = engine.createStatement()) {
            // what it needs is part of the driver; nothing is ever fetched
            sql.execute("set autoinstall_known_extensions = false");
            sql.execute("copy (select * from read_json(" + quoted(lines) + ", format = 'newline_delimited', columns = {"
                    + COLUMNS + "})) to " + quoted(parquet) + " (format parquet, compression zstd)");
            return parquet;
        } catch (SQLException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private static String quoted(Path file) {
        return "'" + file.toAbsolutePath().toString().replace("'", "''") + "'";
    }
}
