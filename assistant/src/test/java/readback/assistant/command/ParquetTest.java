package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.duckdb.DuckDBDriver;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.Readback;
import readback.assistant.recorded.Scripted;

/** The Parquet file of many sessions, read back with DuckDB and compared with the lines of JSON. */
@Tag("slow")
class ParquetTest {

    @TempDir
    private Path folder;

    private Path sessions;
    private Path parquet;

    @BeforeEach
    void record() throws Exception {
        sessions = Files.createDirectory(folder.resolve("sessions"));
        parquet = folder.resolve("it's all.parquet");
        Scripted.charging("session-1").in(sessions);
        Scripted.valve("session-2").say(900, "new capacitor").in(sessions);
    }

    private List<JsonNode> exported() throws Exception {
        Path lines = folder.resolve("all.jsonl");
        assertThat(Ran.of(
                                "",
                                "sessions",
                                sessions.toString(),
                                "--parquet",
                                parquet.toString(),
                                "--export",
                                lines.toString())
                        .out())
                .contains("Written: " + parquet)
                .contains("Written: " + lines);
        List<JsonNode> nodes = new ArrayList<>();
        for (String line : Files.readAllLines(lines)) {
            nodes.add(new ObjectMapper().readTree(line));
        }
        return nodes;
    }

    private List<List<String>> query(String sql) throws Exception {
        try (Connection engine = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = engine.createStatement();
                ResultSet found = statement.executeQuery(
                        sql.replace("FILE", "'" + parquet.toString().replace("'", "''") + "'"))) {
            List<List<String>> rows = new ArrayList<>();
            while (found.next()) {
                List<String> row = new ArrayList<>();
                for (int i = 1; i <= found.getMetaData().getColumnCount(); i++) {
                    row.add(String.valueOf(found.getString(i)));
                }
                rows.add(row);
            }
            return rows;
        }
    }

    @Test
    void it_has_every_field_of_the_lines_and_nothing_else() throws Exception {
        List<String> fields = new ArrayList<>();
        exported().get(0).fieldNames().forEachRemaining(fields::add);

        assertThat(query("select column_name from (describe select * from FILE)"))
                .extracting(row -> row.get(0))
                .containsExactlyElementsOf(fields);
    }

    @Test
    void it_has_the_values_of_the_lines_in_lists_too() throws Exception {
        for (JsonNode line : exported()) {
            String of = " from FILE where session = '" + line.path("session").asText() + "'";
            assertThat(query("select verdict, hash, events, closed, leak_test" + of))
                    .containsExactly(List.of(
                            line.path("verdict").asText(),
                            line.path("hash").asText(),
                            line.path("events").asText(),
                            line.path("closed").asText(),
                            line.path("leak_test").asText()));
            assertThat(query("select epoch_ms(started) = epoch_ms(timestamptz '"
                            + line.path("started").asText() + "')" + of))
                    .containsExactly(List.of("true"));
            for (String list : List.of("readings", "verdicts", "moves", "outcomes", "cautions", "work")) {
                assertThat(query("select len(" + list + ")" + of))
                        .as(list)
                        .containsExactly(List.of(String.valueOf(line.path(list).size())));
            }
            JsonNode reading = line.path("readings").path(1);
            List<String> row = query("select readings[2].name, readings[2].value, readings[2].si" + of)
                    .get(0);
            assertThat(row.get(0)).isEqualTo(reading.path("name").asText());
            assertThat(Double.parseDouble(row.get(1)))
                    .isCloseTo(reading.path("value").asDouble(), within(1e-9));
            assertThat(Double.parseDouble(row.get(2)))
                    .isCloseTo(reading.path("si").asDouble(), within(1e-6));
        }
    }

    @Test
    void it_takes_the_place_of_no_other_file() throws Exception {
        exported();

        assertThat(Ran.of("", "sessions", sessions.toString(), "--parquet", parquet.toString())
                        .err())
                .contains("is there already")
                .contains("--force");
    }

    /** A program of its own whose class path lacks the driver, as the distribution's does. */
    private String distribution(Path home) throws Exception {
        String own = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(entry -> !entry.contains("duckdb"))
                .collect(Collectors.joining(File.pathSeparator));
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process program = new ProcessBuilder(
                        java.toString(),
                        "-Dreadback.home=" + home,
                        "-cp",
                        own,
                        Readback.class.getName(),
                        "sessions",
                        sessions.toString(),
                        "--parquet",
                        parquet.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        program.waitFor();
        return said;
    }

    @Test
    void the_driver_is_an_optional_jar_among_the_libraries() throws Exception {
        Path home = folder.resolve("readback");
        Path libraries = Files.createDirectories(home.resolve("lib"));

        assertThat(distribution(home))
                .contains("needs DuckDB's driver")
                .contains("org.duckdb:duckdb_jdbc")
                .contains(libraries.toString());
        assertThat(parquet).doesNotExist();

        Path jar = Path.of(DuckDBDriver.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        Files.createSymbolicLink(libraries.resolve("duckdb_jdbc-1.jar"), jar);

        assertThat(distribution(home)).contains("Written: " + parquet);
        assertThat(query("select count(*) from FILE")).containsExactly(List.of("2"));
    }
}
