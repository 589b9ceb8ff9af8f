package readback.assistant.command;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.archive.Summary;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.language.Names;
import readback.assistant.replay.Visible;
import readback.calc.name.ConstantName;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/** A session as the list shows it: one line, and the figures below it where they are wanted. Immutable. */
final class SessionRow {

    private static final String CHARGE = ConstantName.of(Judged.CHARGE);

    private final Language language;
    private final Names names;

    SessionRow(Language language) {
        this.language = language;
        this.names = new Names(language);
    }

    /** The session in one line. */
    String line(Summary summary) {
        String verdict = verdict(summary.verdict())
                + (summary.borderline() ? " (" + language.label("screen.verdict.borderline") + ")" : "")
                + followed(summary);
        String moved = summary.moves().isEmpty()
                ? ""
                : String.format(Locale.ROOT, "%+.3f kg", summary.addedKilograms() - summary.recoveredKilograms());
        return Visible.text(String.format(
                        Locale.ROOT,
                        "%s  %-8s %-26s %s  %-9s %s  %s%s",
                        language.start(summary.started(), summary.zone()),
                        summary.refrigerant(),
                        verdict,
                        language.label(
                                "report.list.doubts-and-cautions",
                                String.format(Locale.ROOT, "%2d", summary.doubts()),
                                String.format(
                                        Locale.ROOT, "%2d", summary.cautions().size())),
                        moved,
                        summary.session(),
                        summary.technician(),
                        summary.fault().isEmpty() ? "" : "  " + language.label("report.list.damaged", summary.fault())))
                .stripTrailing();
    }

    /** Every figure of every outcome, one a line. */
    Stream<String> figures(Summary summary) {
        return summary.outcomes().stream()
                .flatMap(outcome -> outcome.figures().stream()
                        .map(figure -> Visible.text(String.format(
                                Locale.ROOT,
                                "    %s: %s %s (%s)",
                                verdict(outcome.name()),
                                name(figure),
                                figure.shown(),
                                figure.siShown()))));
    }

    /** The numbers that followed from a test or a weighing; those of the charge are its report's. */
    private String followed(Summary summary) {
        List<String> numbers = summary.reached().stream()
                .filter(outcome -> !outcome.judged().equals(CHARGE))
                .flatMap(outcome -> outcome.figures().stream())
                .filter(figure ->
                        language.find("report.figure." + figure.name()).isPresent())
                .map(figure -> name(figure) + " " + figure.shown())
                .collect(Collectors.toList());
        return numbers.isEmpty() ? "" : ", " + String.join(", ", numbers);
    }

    private String name(Figure figure) {
        return language.find("report.figure." + figure.name()).orElseGet(() -> names.slot(new Slot(figure.name())));
    }

    /** The name of a verdict; that there is none where it is empty. */
    String verdict(String name) {
        return name.isEmpty() ? language.label("report.list.no-verdict") : names.outcome(name);
    }
}
