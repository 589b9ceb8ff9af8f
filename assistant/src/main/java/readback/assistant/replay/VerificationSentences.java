package readback.assistant.replay;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.language.Names;
import readback.assistant.record.RecordFault;
import readback.assistant.session.Build;
import readback.calc.name.ConstantName;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;

/** Whether a record holds and a replay agrees with it, in the words of a language. Immutable. */
public final class VerificationSentences {

    private final Language language;
    private final Names names;

    public VerificationSentences(Language language) {
        this.language = language;
        this.names = new Names(language);
    }

    /** What is wrong with a record. */
    public String fault(RecordFault fault) {
        return language.label("report.fault." + ConstantName.of(fault.kind()), fault.line());
    }

    /** The result of a verification for a reader, a sentence each. */
    public List<String> sentences(Verification verification) {
        List<String> sentences = new ArrayList<>();
        boolean another = verification.byAnotherVersion();
        verification
                .difference()
                .filter(any -> another)
                .ifPresent(found -> sentences.add(otherVersion(verification, found)));
        sentences.add(verification
                .fault()
                .map(found -> language.label("report.verified.fault", fault(found)))
                .orElseGet(() -> language.label("report.verified.holds")));
        if (verification.difference().isEmpty()) {
            sentences.add(language.label("report.verified.identical", verification.events()));
        }
        verification
                .difference()
                .filter(any -> !another)
                .ifPresent(found -> sentences.add(language.label("report.verified.difference", difference(found))));
        verification
                .otherParts()
                .forEach((part, change) -> sentences.add(language.label("report.verified.other", part(part), change)));
        return sentences;
    }

    /** That another version made a record that this one replays differently, and where. */
    public String otherVersion(Verification verification, Difference found) {
        return language.label(
                "report.verified.other-version",
                verification.madeWith(),
                Build.ofThisProgram().name(),
                difference(found));
    }

    /** Where a replay differs from its record; what stood there and stands there now is quoted as it is compared. */
    public String difference(Difference found) {
        String what =
                language.find("report.differs." + found.what()).orElseGet(() -> names.slot(new Slot(found.what())));
        return language.label("report.difference", found.event(), what, found.recorded(), found.replayed());
    }

    /** A part of the program that takes part in a session, as in "grammar". */
    public String part(String part) {
        return language.label("report.part." + part);
    }
}
