package readback.assistant.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.About;
import readback.assistant.recorded.Scripted;

/** The exported lines in an analytic engine, as they are: DuckDB, embedded. */
class DuckDbTest {

    @Test
    @Tag("slow")
    void exported_sessions_are_summed_by_sql_without_any_conversion(@TempDir Path folder) throws Exception {
        Path sessions = Files.createDirectory(folder.resolve("sessions"));
        for (int i = 0; i < 3; i++) {
            Scripted.charging("session-" + i)
                    .about(About.CYLINDER, i == 0 ? "C-1" : "C-2")
                    .about(About.APPLIANCE, "Unit ' \" " + i)
                    .in(sessions);
        }
        Scripted.valve("session-v").in(sessions);
        Sums sums = new Sums();
        List<String> lines = new ArrayList<>();
        Archive.in(sessions).each(summary -> {
            sums.add(summary);
            lines.add(SummaryLine.of(summary));
        });
        Path export = Files.write(folder.resolve("sessions.jsonl"), lines);
        try (Connection engine = DriverManager.getConnection("jdbc:duckdb:");
                Statement sql = engine.createStatement()) {
            sql.execute("create view sessions as select * from read_json_auto('" + export + "')");
            try (ResultSet cylinders = sql.executeQuery("select c.cylinder, sum(c.added_kg) from"
                    + " (select unnest(cylinders) as c from sessions) group by 1 order by 1")) {
                int rows = 0;
                while (cylinders.next()) {
                    rows++;
                    assertThat(cylinders.getDouble(2)).isCloseTo(addedBy(sums, cylinders.getString(1)), within(1e-5));
                }
                assertThat(rows).isEqualTo(2);
            }
            try (ResultSet verdicts = sql.executeQuery(
                    "select verdict, count(*), min(typeof(started)) from sessions group by 1 order by 1")) {
                assertThat(verdicts.next()).isTrue();
                assertThat(verdicts.getString(1)).isEqualTo("add");
                assertThat(verdicts.getInt(2)).isEqualTo(sums.byVerdict().get("add"));
                assertThat(verdicts.getString(3)).startsWith("TIMESTAMP");
            }
        }
    }

    private static double addedBy(Sums sums, String cylinder) {
        return java.util.Objects.requireNonNull(sums.byCylinder().get(cylinder)).addedKilograms();
    }
}
