package readback.fleet;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.report.TablesPage;
import readback.prompts.text.Language;

/** Answers what a head of service asks of the tables. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = {
            "Answers what a head of service asks, as one HTML page and a CSV file for each question: right the first"
                    + " time, sites visited again, borderline verdicts, doubts by technician and model, cautions passed"
                    + " over, refrigerant moved, faults, units that lose much, calls that were not finished.",
            "The same questions in SQL, for DuckDB on one desk, lie in the program's jar: readback/fleet/questions."
        })
final class ServiceReportCommand implements Callable<Integer> {

    private static final String PAGE = "fleet.html";

    private final PrintStream out;
    private final PrintStream err;
    private final Clock clock;
    private final Language language = Language.english();

    @Parameters(paramLabel = "TABLES", description = "The folder that 'readback-fleet tables' wrote.")
    private String tables = "";

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where page and CSV files go.")
    private Path folder = Path.of("");

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description = "The day up to whose end is asked (UTC), as in 2026-11-30. Default: the latest call.")
    private @Nullable String asOf;

    @Option(names = "--force", description = "Write over the files of an earlier report.")
    private boolean force;

    @Mixin
    private EngineOptions options = new EngineOptions();

    ServiceReportCommand(PrintStream out, PrintStream err, Clock clock) {
        this.out = out;
        this.err = err;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Optional<Instant> day = Optional.ofNullable(asOf).map(ServiceReportCommand::endOf);
        SparkSession engine = options.start(err);
        TablesFolder place = new TablesFolder(engine, tables);
        TablesFolder.About about = about(place);
        mustBeFree();
        Instant moment = day.orElseGet(() -> Instant.parse(about.latest()));
        Map<Question, Answer> answers = answers(engine, place, moment);
        AnswerTexts texts = new AnswerTexts(language);
        List<TablesPage.Table> shown = new ArrayList<>();
        answers.forEach((question, answer) -> shown.add(texts.table(question, answer)));
        List<String> lead = List.of(
                texts.label("span", language.start(moment, ZoneOffset.UTC)) + " "
                        + texts.label("names." + about.names()),
                texts.label("what"),
                texts.label("person"));
        String page =
                TablesPage.of(language, texts.label("title"), lead, shown, texts.label("nothing"), clock.instant());
        try {
            Files.createDirectories(folder);
            for (Map.Entry<Question, Answer> each : answers.entrySet()) {
                write(csvFile(each.getKey()), AnswerTexts.csv(each.getValue()));
            }
            write("about.csv", aboutFile(about, moment));
            write(PAGE, page);
        } catch (IOException e) {
            throw new FleetFailure(
                    "'" + folder + "' cannot be written (" + e.getMessage() + "): name a folder that you may write to.",
                    e);
        }
        out.println("Written: " + folder.resolve(PAGE) + " and " + (answers.size() + 1) + " CSV files beside it; "
                + texts.label("names." + about.names()));
        return 0;
    }

    private static String csvFile(Question question) {
        return question.id() + ".csv";
    }

    private static String aboutFile(TablesFolder.About about, Instant moment) {
        return AnswerTexts.csv(new Answer(
                List.of("what", "value"),
                List.of(
                        List.of("as_of", moment.toString()),
                        List.of("sessions", about.sessions()),
                        List.of("names", about.names()),
                        List.of("key", about.key()))));
    }

    private static Instant endOf(String day) {
        try {
            return LocalDate.parse(day)
                    .plusDays(1)
                    .atStartOfDay(ZoneOffset.UTC)
                    .toInstant()
                    .minusSeconds(1);
        } catch (DateTimeParseException e) {
            throw new FleetFailure("--as-of is a day as in 2026-11-30, not '" + day + "'.", e);
        }
    }

    private TablesFolder.About about(TablesFolder place) {
        try {
            return place.about()
                    .orElseThrow(
                            () -> new FleetFailure(
                                    "'" + place
                                            + "' holds no tables: make them first, with 'readback-fleet tables BUNDLES --out FOLDER'."));
        } catch (IOException e) {
            throw new FleetFailure("The tables in '" + place + "' cannot be read (" + e.getMessage() + ").", e);
        }
    }

    private void mustBeFree() {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FleetFailure("'" + folder + "' is a file: name a folder for the report.");
        }
        if (Files.exists(folder.resolve(PAGE)) && !force) {
            throw new FleetFailure(
                    "'" + folder.resolve(PAGE) + "' is there already: name another folder, or add --force.");
        }
    }

    /** The answers in the order of the questions. */
    private Map<Question, Answer> answers(SparkSession engine, TablesFolder place, Instant moment) {
        for (String table : Tables.all()) {
            engine.read().schema(Tables.form(table)).parquet(place.table(table)).createOrReplaceTempView(table);
        }
        engine.sql(Question.calls()).createOrReplaceTempView(Question.CALLS);
        WorkedOut worked = new WorkedOut(language, moment);
        Map<Question, Answer> answers = new LinkedHashMap<>();
        for (Question question : Question.values()) {
            Engine.doing(engine, "Asking for " + question.id());
            answers.put(question, worked.of(question, answer(engine.sql(question.sql(moment)))));
        }
        return answers;
    }

    private static Answer answer(Dataset<Row> rows) {
        List<List<@Nullable Object>> cells = new ArrayList<>();
        for (Row row : rows.collectAsList()) {
            List<@Nullable Object> cellsOfRow = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cellsOfRow.add(cell(row.get(i)));
            }
            cells.add(cellsOfRow);
        }
        return new Answer(List.of(rows.columns()), cells);
    }

    /** A value of the engine as an answer has it. */
    static @Nullable Object cell(@Nullable Object value) {
        if (value instanceof Timestamp moment) {
            return moment.toInstant();
        }
        if (value instanceof Integer number) {
            return number.longValue();
        }
        return value instanceof java.math.BigDecimal number ? (Object) number.doubleValue() : value;
    }

    private void write(String name, String text) throws IOException {
        Path part = folder.resolve("." + UUID.randomUUID() + ".part");
        try {
            Files.writeString(part, text);
            Files.move(part, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
