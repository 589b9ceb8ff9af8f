package readback.assistant.dialogue;

import java.util.List;
import java.util.stream.Collectors;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.grammar.Meaning;

/** Meanings in one line, for the record. */
final class MeaningLine {

    private static final Meaning.Cases<String> LINE = new Meaning.Cases<>() {
        @Override
        public String values(Meaning.Values values) {
            return written(values.readings());
        }

        @Override
        public String correction(Meaning.Correction correction) {
            return "correction: " + written(correction.readings());
        }

        @Override
        public String choice(Meaning.Choice choice) {
            return choice.choice() + ": " + choice.option();
        }

        @Override
        public String choices(Meaning.Choices choices) {
            return choices.choices().stream().map(this::choice).collect(Collectors.joining(", "));
        }

        @Override
        public String ordered(Meaning.Ordered ordered) {
            return ConstantName.of(ordered.command())
                    + ordered.about()
                            .map(quantity -> " " + ConstantName.of(quantity))
                            .orElse("");
        }

        @Override
        public String note(Meaning.Note note) {
            return "note: " + note.words();
        }

        @Override
        public String saturationQuestion(Meaning.SaturationQuestion question) {
            return "saturation at " + written(List.of(question.pressure()));
        }

        @Override
        public String probeNamed(Meaning.ProbeNamed named) {
            return "probe " + named.number() + ": " + ConstantName.of(named.quantity());
        }

        @Override
        public String mentioned(Meaning.Mentioned mentioned) {
            return "spoken of: " + choice(mentioned.of());
        }

        @Override
        public String notUnderstood(Meaning.NotUnderstood reason) {
            return "not understood";
        }
    };

    private MeaningLine() {}

    /** The meaning in words that a supervisor can read, the same for equal meanings. */
    static String line(Meaning meaning) {
        return meaning.fold(LINE);
    }

    private static String written(List<Reading> readings) {
        return readings.stream()
                .map(reading -> ConstantName.of(reading.quantity()) + " "
                        + reading.value().toPlainString() + " " + reading.unit().symbol())
                .collect(Collectors.joining(", "));
    }
}
