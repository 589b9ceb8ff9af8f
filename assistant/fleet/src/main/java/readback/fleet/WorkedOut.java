package readback.fleet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import readback.calc.fluid.AssessmentReport;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.procedure.LeakRate;
import readback.calc.procedure.LeakRule;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Unit;
import readback.prompts.text.Language;

/** What the program's own facts add to an answer. */
final class WorkedOut {

    private static final double KILOGRAMS_A_TONNE = 1000;

    /** What is added. */
    enum Kind {
        AS_ANSWERED,
        OVERVIEW,
        REFRIGERANTS,
        LEAKS
    }

    private final Language language;
    private final LocalDate day;

    /** @param asOf the moment up to which was asked: rules of that day count */
    WorkedOut(Language language, Instant asOf) {
        this.language = language;
        this.day = asOf.atZone(ZoneOffset.UTC).toLocalDate();
    }

    Answer of(Question question, Answer answer) {
        return switch (question.worked()) {
            case AS_ANSWERED -> answer;
            case OVERVIEW -> overview(answer);
            case REFRIGERANTS -> refrigerants(answer);
            case LEAKS -> leaks(answer);
        };
    }

    /** The one row as a row for each of its columns. */
    private static Answer overview(Answer answer) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (int i = 0; i < answer.columns().size(); i++) {
            rows.add(row(answer.columns().get(i), answer.rows().get(0).get(i)));
        }
        return new Answer(List.of("what", "count"), rows);
    }

    private static List<@Nullable Object> row(@Nullable Object... cells) {
        List<@Nullable Object> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell);
        }
        return row;
    }

    private static Answer refrigerants(Answer answer) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (List<@Nullable Object> each : answer.rows()) {
            String name = String.valueOf(each.get(0));
            double added = number(each.get(2));
            double recovered = number(each.get(3));
            rows.add(row(
                    name,
                    each.get(1),
                    pounds(added),
                    pounds(recovered),
                    tonnes(name, AssessmentReport.AR4, added),
                    tonnes(name, AssessmentReport.AR4, recovered),
                    tonnes(name, AssessmentReport.AR5, added),
                    tonnes(name, AssessmentReport.AR5, recovered)));
        }
        return new Answer(
                List.of(
                        "refrigerant",
                        "calls",
                        "added_lb",
                        "recovered_lb",
                        "added_t_ar4",
                        "recovered_t_ar4",
                        "added_t_ar5",
                        "recovered_t_ar5"),
                rows);
    }

    /** Tonnes of CO2 equivalent; null for a refrigerant that is not known. */
    private static @Nullable Double tonnes(String refrigerant, AssessmentReport edition, double kilograms) {
        return known(refrigerant)
                .map(each -> kilograms * each.globalWarmingPotential(edition) / KILOGRAMS_A_TONNE)
                .orElse(null);
    }

    private static Optional<Refrigerant> known(String designation) {
        return Catalogue.standard().find(designation).known();
    }

    private Answer leaks(Answer answer) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (List<@Nullable Object> each : answer.rows()) {
            String refrigerant = String.valueOf(each.get(1));
            Mass full = Mass.kilograms(number(each.get(2)));
            double percent = LeakRate.rolling(Mass.kilograms(number(each.get(3))), full);
            known(refrigerant)
                    .flatMap(one -> LeakRule.of(one, day))
                    .filter(rule -> percent > rule.percent())
                    .ifPresent(rule -> rows.add(row(
                            each.get(0),
                            refrigerant,
                            pounds(full.kilograms()),
                            pounds(number(each.get(3))),
                            percent,
                            told(rule, full))));
        }
        return new Answer(List.of("appliance", "refrigerant", "full_charge_lb", "added_lb", "percent", "rule"), rows);
    }

    private String told(LeakRule rule, Mass full) {
        String key = !rule.reaches(full) ? "small" : rule.homesExempt() ? "ask" : "holds";
        return language.label(
                "fleet.rule." + key,
                rule.name(),
                Math.round(pounds(rule.fullCharge().kilograms())));
    }

    private static double pounds(double kilograms) {
        return Unit.POUND.fromBase(kilograms);
    }

    private static double number(@Nullable Object cell) {
        return cell instanceof Number number ? number.doubleValue() : 0;
    }
}
