package readback.fleet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The answer to a question.
 *
 * @param columns their names, as in SQL
 * @param rows in order; a cell is a text, a {@link Long}, a {@link Double}, an {@link java.time.Instant} or null
 */
record Answer(List<String> columns, List<List<@Nullable Object>> rows) {

    Answer {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
