package readback.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What a head of service asks of the tables. The words of each question are SQL that Spark and DuckDB understand alike
 * ({@code questions/NAME.sql}), over the tables by their names and {@code calls}, the sessions that count; what the
 * catalogue of refrigerants and the rules on leaks add to an answer is added by {@link WorkedOut}.
 */
enum Question {
    OVERVIEW(WorkedOut.Kind.OVERVIEW),
    MONTHS(WorkedOut.Kind.AS_ANSWERED),
    FIRST_TIME_RIGHT(WorkedOut.Kind.AS_ANSWERED),
    REVISITS(WorkedOut.Kind.AS_ANSWERED),
    BORDERLINE(WorkedOut.Kind.AS_ANSWERED),
    DOUBTS(WorkedOut.Kind.AS_ANSWERED),
    ASKED(WorkedOut.Kind.AS_ANSWERED),
    CAUTIONS(WorkedOut.Kind.AS_ANSWERED),
    REFRIGERANTS(WorkedOut.Kind.REFRIGERANTS),
    FAULTS(WorkedOut.Kind.AS_ANSWERED),
    LEAKS(WorkedOut.Kind.LEAKS),
    UNCLOSED(WorkedOut.Kind.AS_ANSWERED);

    /** Selects the sessions that count; a view of this name must stand before a question is asked. */
    static final String CALLS = "calls";

    private static final String AS_OF = "{as_of}";

    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final WorkedOut.Kind worked;

    Question(WorkedOut.Kind worked) {
        this.worked = worked;
    }

    /** As its file, its table and its place in the page are named. */
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    WorkedOut.Kind worked() {
        return worked;
    }

    /**
     * The question in SQL.
     *
     * @param asOf the moment up to which it is asked
     */
    String sql(Instant asOf) {
        return resource(id()).replace(AS_OF, "TIMESTAMP '" + MOMENT.format(asOf) + "'");
    }

    /** What {@link #CALLS} selects, in SQL. */
    static String calls() {
        return resource(CALLS);
    }

    /** Without its comments, which not every engine takes at the start. */
    private static String resource(String name) {
        String file = "/readback/fleet/questions/" + name + ".sql";
        try (InputStream in = Question.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the installation lacks " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("--"))
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException("the installation cannot be read", e);
        }
    }
}
