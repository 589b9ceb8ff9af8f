package readback.fleet;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.assistant.language.Names;
import readback.assistant.report.Csv;
import readback.assistant.report.TablesPage;
import readback.calc.caution.Signal;
import readback.calc.diagnosis.Fault;
import readback.calc.name.ConstantName;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/** Answers in the words of a language, as a table of a page; and as they are, for other programs. */
final class AnswerTexts {

    private static final double PERCENT = 100;

    /** Columns that have another label where a question's own name would be meant. */
    private static final Set<String> OWN_LABELS =
            Set.of("overview.what", "overview.count", "borderline.borderline", "doubts.doubts", "asked.asked");

    private final Language language;
    private final Names names;

    AnswerTexts(Language language) {
        this.language = language;
        this.names = new Names(language);
    }

    /** A label of the fleet. */
    String label(String key, Object... values) {
        return language.label("fleet." + key, values);
    }

    /** The answer as a table of a page. */
    TablesPage.Table table(Question question, Answer answer) {
        String heading = question == Question.UNCLOSED ? "unclosed.list" : question.id();
        return new TablesPage.Table(
                question.id(),
                label(heading),
                label(heading + ".about"),
                answer.columns().stream()
                        .map(column -> column(question, column))
                        .toList(),
                answer.rows().stream().map(row -> shown(answer.columns(), row)).toList());
    }

    private String column(Question question, String column) {
        String own = question.id() + "." + column;
        if (!OWN_LABELS.contains(own)) {
            return label(column);
        }
        return switch (own) {
            case "borderline.borderline", "doubts.doubts" -> label(question.id() + ".count");
            case "asked.asked" -> label("asked.what");
            default -> label(own);
        };
    }

    private List<String> shown(List<String> columns, List<@Nullable Object> row) {
        List<String> cells = new java.util.ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            cells.add(shown(columns.get(i), row.get(i)));
        }
        return cells;
    }

    private String shown(String column, @Nullable Object cell) {
        if (cell == null) {
            return label("none");
        }
        if (cell instanceof Double number) {
            return number(column, number);
        }
        if (cell instanceof Instant moment) {
            return language.start(moment, java.time.ZoneOffset.UTC);
        }
        String text = String.valueOf(cell);
        return switch (column) {
            case "what" -> label(text);
            case "verdict" -> Names.capital(names.outcome(text));
            case "caution" -> Names.capital(names.caution(text));
            case "signal" ->
                ConstantName.find(Signal.class, text)
                        .map(signal -> Names.capital(names.constant("signal", signal)))
                        .orElse(text);
            case "fault_found" ->
                ConstantName.find(Fault.class, text)
                        .map(fault -> Names.capital(names.constant("fault", fault)))
                        .orElse(text);
            case "asked" -> text.isEmpty() ? label("none") : Names.capital(names.slot(new Slot(text)));
            case "kind" -> label("kind." + text);
            case "model" -> text.isEmpty() ? label("model.none") : text;
            default -> text.isEmpty() ? label("none") : text;
        };
    }

    private static String number(String column, double number) {
        return switch (column) {
            case "share" -> String.format(Locale.ROOT, "%.1f %%", PERCENT * number);
            case "doubts_a_value" -> String.format(Locale.ROOT, "%.3f", number);
            case "added_t_ar4", "recovered_t_ar4", "added_t_ar5", "recovered_t_ar5" ->
                String.format(Locale.ROOT, "%.2f", number);
            default -> String.format(Locale.ROOT, "%.1f", number);
        };
    }

    /** The answer as comma-separated values: ids and numbers as they are. */
    static String csv(Answer answer) {
        Csv csv = new Csv(answer.columns());
        for (List<@Nullable Object> row : answer.rows()) {
            Csv.Row cells = csv.row();
            for (Object cell : row) {
                if (cell instanceof Double number) {
                    cells.number(String.format(Locale.ROOT, "%.6f", number));
                } else if (cell instanceof Long count) {
                    cells.number(String.valueOf(count));
                } else {
                    cells.text(cell == null ? "" : String.valueOf(cell));
                }
            }
            cells.end();
        }
        return csv.toString();
    }
}
