package readback.assistant.dialogue;

import java.util.List;
import java.util.stream.Collectors;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.grammar.Meaning;

/** Meanings in one line, for the record. */
final class MeaningLine {

    private MeaningLine() {}

    /** The meaning in words that a supervisor can read, the same for equal meanings. */
    static String line(Meaning meaning) {
        if (meaning instanceof Meaning.Values values) {
            return readings(values.readings());
        }
        if (meaning instanceof Meaning.Correction correction) {
            return "correction: " + readings(correction.readings());
        }
        if (meaning instanceof Meaning.Choice choice) {
            return choice.choice() + ": " + choice.option();
        }
        if (meaning instanceof Meaning.Ordered ordered) {
            return ConstantName.of(ordered.command())
                    + ordered.about()
                            .map(quantity -> " " + ConstantName.of(quantity))
                            .orElse("");
        }
        if (meaning instanceof Meaning.Note note) {
            return "note: " + note.words();
        }
        if (meaning instanceof Meaning.SaturationQuestion question) {
            return "saturation at " + readings(List.of(question.pressure()));
        }
        return "not understood";
    }

    private static String readings(List<Reading> readings) {
        return readings.stream()
                .map(reading -> ConstantName.of(reading.quantity()) + " "
                        + reading.value().toPlainString() + " " + reading.unit().symbol())
                .collect(Collectors.joining(", "));
    }
}
