package readback.assistant.report;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Visits;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.replay.Visible;
import readback.calc.fluid.Refrigerant;
import readback.calc.procedure.LeakRate;
import readback.calc.procedure.LeakRule;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Unit;
import readback.prompts.text.Language;

/** The history of an equipment in the words of a language: its visits side by side, and what follows from them. */
public final class HistoryTexts {

    /** Charge work is followed up within a month: 40 CFR 82.157(d) gives as many days for a repair. */
    private static final long FOLLOW_UP_DAYS = 30;

    private final ReportTexts texts;
    private final Language language;

    public HistoryTexts(Language language) {
        this.language = language;
        this.texts = new ReportTexts(language);
    }

    /**
     * One row of the table: what, and its value at each visit.
     *
     * @param changed whether it is another one at the last visit than at the one before
     */
    public record Row(String name, List<String> values, boolean changed) {
        public Row {
            values = List.copyOf(values);
        }
    }

    /** The latest visits side by side, oldest first. */
    public List<Row> rows(Visits visits, int count) {
        List<Summary> last = visits.last(count);
        List<Row> rows = new ArrayList<>();
        rows.add(row(
                "started",
                last.stream()
                        .map(each -> texts.start(each.started(), each.zone()))
                        .toList(),
                false));
        rows.add(row("session", last.stream().map(Summary::session).toList(), false));
        rows.add(row("about.technician", last.stream().map(Summary::technician).toList(), true));
        rows.add(row(
                "column.refrigerant", last.stream().map(Summary::refrigerant).toList(), true));
        rows.add(row(
                "verdict",
                last.stream().map(each -> texts.outcome(each.verdict())).toList(),
                true));
        figures(last).forEach((name, values) -> rows.add(row(name, values)));
        rows.add(row(
                "added",
                last.stream()
                        .map(each -> amount(each.addedSaid(), each.addedKilograms()))
                        .toList(),
                true));
        rows.add(row(
                "recovered",
                last.stream()
                        .map(each -> amount(each.recoveredSaid(), each.recoveredKilograms()))
                        .toList(),
                true));
        return rows;
    }

    private Row row(String label, List<String> values, boolean comparable) {
        Row row = row(texts.label(label), values);
        return comparable ? row : new Row(row.name(), row.values(), false);
    }

    private static Row row(String name, List<String> values) {
        int last = values.size() - 1;
        return new Row(name, values, last > 0 && !values.get(last).equals(values.get(last - 1)));
    }

    /** Every figure of every visit by its name; empty where a visit has none of that name. */
    private Map<String, List<String>> figures(List<Summary> visits) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        TreeSet<String> names = new TreeSet<>();
        visits.forEach(visit -> visit.outcomes()
                .forEach(outcome -> outcome.figures().forEach(figure -> names.add(texts.figure(figure)))));
        for (String name : names) {
            rows.put(
                    name,
                    visits.stream()
                            .map(visit -> visit.outcomes().stream()
                                    .flatMap(outcome -> outcome.figures().stream())
                                    .filter(figure -> texts.figure(figure).equals(name))
                                    .findFirst()
                                    .map(Figure::shown)
                                    .orElse(""))
                            .toList());
        }
        return rows;
    }

    private String amount(boolean said, double kilograms) {
        return said ? Figures.both(kilograms) : texts.label("not-said");
    }

    /** How many visits there were, and refrigerant in and out over all of them. */
    public String inAll(Visits visits) {
        return language.label(
                "report.history.in-all",
                visits.all().size(),
                Figures.both(visits.all().stream()
                        .mapToDouble(Summary::addedKilograms)
                        .sum()),
                Figures.both(visits.all().stream()
                        .mapToDouble(Summary::recoveredKilograms)
                        .sum()));
    }

    /**
     * The leak rate over 365 days and whether a rule looks at it; why there is none where there is none.
     *
     * @param refrigerant that the visits name, if it is known
     */
    public List<String> leak(Visits visits, Optional<Refrigerant> refrigerant, Instant now) {
        OptionalDouble full = visits.fullChargeKilograms();
        if (full.isEmpty() || full.getAsDouble() <= 0) {
            return List.of(texts.label("history.no-full-charge"));
        }
        Mass charge = Mass.kilograms(full.getAsDouble());
        double added = visits.addedInAYearTo(now);
        double percent = LeakRate.rolling(Mass.kilograms(added), charge);
        List<String> sentences = new ArrayList<>();
        sentences.add(language.label(
                "report.history.leak-rate",
                Figures.both(added),
                Figures.both(full.getAsDouble()),
                Figures.tenths(percent)));
        LocalDate day = now.atZone(ZoneOffset.UTC).toLocalDate();
        sentences.add(refrigerant
                .flatMap(known -> LeakRule.of(known, day))
                .map(rule -> rule(rule, charge, percent))
                .orElseGet(() -> texts.label("history.no-rule")));
        return sentences;
    }

    private String rule(LeakRule rule, Mass charge, double percent) {
        String pounds = new BigDecimal(
                        Figures.tenths(Unit.POUND.fromBase(rule.fullCharge().kilograms())))
                .stripTrailingZeros()
                .toPlainString();
        String key = rule.reaches(charge)
                ? rule.homesExempt() ? "history.rule-unless-home" : "history.rule-holds"
                : rule.homesExempt() ? "history.rule-too-small-or-home" : "history.rule-too-small";
        String sentence = language.label(
                "report." + key, rule.name(), pounds, Figures.tenths(rule.percent()), rule.since(), rule.source());
        return rule.reaches(charge) && percent > rule.percent()
                ? sentence + " " + texts.label("history.over")
                : sentence;
    }

    /** That the charge was left unsettled, and for how long; empty where it was not. */
    public Optional<String> followUp(Visits visits, Instant now) {
        return visits.unsettled().map(session -> {
            long days = Math.max(0, Duration.between(session.started(), now).toDays());
            return language.label(
                    days > FOLLOW_UP_DAYS ? "report.history.overdue" : "report.history.unsettled",
                    texts.outcome(session.charge()),
                    days,
                    Visible.text(session.session()));
        });
    }
}
