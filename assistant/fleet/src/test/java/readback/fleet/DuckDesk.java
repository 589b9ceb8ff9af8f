package readback.fleet;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** DuckDB on one desk, over the tables that the engine wrote. */
final class DuckDesk implements AutoCloseable {

    private final Connection connection;

    DuckDesk(Path tables) throws SQLException {
        connection = DriverManager.getConnection("jdbc:duckdb:");
        run("set autoinstall_known_extensions = false");
        run("set TimeZone = 'UTC'");
        for (String table : Tables.all()) {
            run("create view " + table + " as select * from read_parquet('" + tables + "/" + table
                    + "/*/*.parquet', hive_partitioning = true, hive_types = {'month': VARCHAR})");
        }
        run("create view " + Question.CALLS + " as " + Question.calls());
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    Answer ask(String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            List<String> columns = new ArrayList<>();
            for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                columns.add(rows.getMetaData().getColumnLabel(i));
            }
            List<List<@Nullable Object>> cells = new ArrayList<>();
            while (rows.next()) {
                List<@Nullable Object> row = new ArrayList<>();
                for (int i = 1; i <= columns.size(); i++) {
                    row.add(cell(rows.getObject(i)));
                }
                cells.add(row);
            }
            return new Answer(columns, cells);
        }
    }

    private static @Nullable Object cell(@Nullable Object value) {
        if (value instanceof OffsetDateTime moment) {
            return moment.toInstant();
        }
        if (value instanceof Integer || value instanceof BigInteger) {
            return ((Number) value).longValue();
        }
        return value instanceof BigDecimal number ? (Object) number.doubleValue() : value;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
