package readback.assistant.report;

import java.util.Optional;
import readback.assistant.dialogue.outcome.Figure;
import readback.calc.charge.Judgement;
import readback.calc.measurement.Band;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Readings;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.checklist.Slot;

/**
 * What the fields of a record of a new installation are made of: the session's last readings and judgement, criteria
 * and sources in words, and what stands where nothing was measured or nothing can be judged.
 */
final class CommissioningFields {

    private final ReportTexts texts;
    private final JobReport report;
    private final Figures figures;
    private final Optional<Judgement> judgement;

    /** Those of the last verdict, and what was told besides. */
    private final Readings readings;

    CommissioningFields(JobReport report, ReportTexts texts) {
        this.texts = texts;
        this.report = report;
        this.figures = new Figures(report.settings().units());
        this.judgement = report.finalRound().map(JobReport.Round::judgement);
        Readings judged =
                report.finalRound().map(round -> round.assessment().readings()).orElseGet(Readings::none);
        for (Reading told : report.last().readings().asMap().values()) {
            judged = judged.has(told.quantity()) ? judged : judged.with(told);
        }
        this.readings = judged;
    }

    /**
     * One field of the record.
     *
     * @param value as it was measured or told; empty for neither
     * @param si the same in the unit of the SI
     * @param lack what stands in place of a value that is not there
     */
    record Field(
            String name,
            Optional<String> value,
            String si,
            String lack,
            String criterion,
            String source,
            String result) {

        /** The same on another's word. */
        Field because(String other) {
            return new Field(name, value, si, lack, criterion, other, result);
        }

        /** The same with a result, where there is one and the field was measured. */
        Field judged(Optional<String> other) {
            return new Field(
                    name,
                    value,
                    si,
                    lack,
                    criterion,
                    source,
                    other.filter(any -> value.isPresent()).orElse(result));
        }
    }

    JobReport report() {
        return report;
    }

    ReportTexts texts() {
        return texts;
    }

    Figures figures() {
        return figures;
    }

    Readings readings() {
        return readings;
    }

    /** The last judgement of the charge, if there was one. */
    Optional<Judgement> judgement() {
        return judgement;
    }

    /** A text of this record's own. */
    String own(String key, Object... values) {
        return texts.label("commissioning." + key, values);
    }

    /** How a value stands to what is usual. */
    String usual(Enum<?> comparison) {
        return texts.label("commissioning.usual." + ConstantName.of(comparison));
    }

    Field field(String name, Optional<Figure> figure, String criterion, String result) {
        return new Field(
                own(name),
                figure.map(Figure::shown),
                figure.map(Figure::siShown).orElse(HtmlTable.NOTHING),
                own("not-measured"),
                criterion,
                texts.label("commissioning.source." + name),
                figure.isPresent() ? result : own("not-judged"));
    }

    String criterion(String name, Object... values) {
        return texts.label("commissioning.criterion." + name, values);
    }

    Field unmeasured(String name) {
        return field(name, Optional.empty(), criterion(name), "");
    }

    Field untold(String name) {
        return new Field(
                own(name),
                Optional.empty(),
                HtmlTable.NOTHING,
                own("not-in-record"),
                criterion(name),
                texts.label("commissioning.source." + name),
                own("not-judged"));
    }

    /** A value with nothing in the record to hold it against. */
    Field stated(String name, Quantity quantity, String criterion) {
        return field(
                name, readings.find(quantity).map(reading -> Figure.of(name, reading)), criterion, own("not-judged"));
    }

    String met(boolean met) {
        return own(met ? "met" : "not-met");
    }

    String held(Comparison comparison) {
        return met(comparison.position() == Comparison.Position.INSIDE)
                + (comparison.borderline() ? ", " + texts.label("index.borderline") : "");
    }

    Figure difference(String name, TemperatureDifference difference) {
        return Figure.difference(name, difference, report.settings().units());
    }

    /** Half of a band that lies evenly around the target. */
    String around(Band band) {
        return figures.limit(band.high());
    }

    Field answered(Slot slot) {
        return new Field(
                texts.slot(slot),
                report.answer(slot).map(content -> texts.content(slot, content)),
                HtmlTable.NOTHING,
                own("not-in-record"),
                criterion(slot.id()),
                texts.label("commissioning.source." + slot.id()),
                report.answer(slot)
                        .map(content -> met(content.line().equals("yes")))
                        .orElseGet(() -> own("not-judged")));
    }
}
