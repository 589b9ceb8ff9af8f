package readback.assistant.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.language.Names;
import readback.assistant.record.RecordFault;
import readback.assistant.replay.Difference;
import readback.assistant.replay.Verification;
import readback.assistant.replay.VerificationSentences;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Signal;
import readback.calc.name.ConstantName;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** The words of reports in a language: labels of their own, and the names of slots, options, outcomes and cautions. */
final class ReportTexts {

    private final Language language;
    private final Names names;
    private final VerificationSentences sentences;

    ReportTexts(Language language) {
        this.language = language;
        this.names = new Names(language);
        this.sentences = new VerificationSentences(language);
    }

    /** As pages state their language, as in "en". */
    String tag() {
        return language.tag();
    }

    /** A label of the report, with values in its places. */
    String label(String key, Object... values) {
        return language.label("report." + key, values);
    }

    private Optional<String> own(String key) {
        return language.find("report." + key);
    }

    /** What a slot is called: in the report's own words where it has some, else by its name. */
    String slot(Slot slot) {
        return own("slot." + slot).orElseGet(() -> Names.capital(names.slot(slot)));
    }

    /** What fills a slot after a change, or that nothing does. */
    String content(Change change) {
        return change.after().map(content -> content(change.slot(), content)).orElseGet(() -> label("content.removed"));
    }

    /** What a slot's content is called. */
    String content(Slot slot, Content content) {
        return own("content." + content.line()).orElseGet(() -> Names.capital(names.content(slot, content)));
    }

    /** What an option of a slot is called. */
    String option(Slot slot, String option) {
        return Names.capital(names.option(slot.id(), option));
    }

    /** The name of an outcome, as in "add"; that there is none where it is empty. */
    String outcome(String name) {
        return name.isEmpty() ? label("verdict.none") : Names.capital(names.outcome(name));
    }

    /** The name of an outcome with the numbers that decided it. */
    String measured(JobReport.Result result) {
        return outcome(result.outcome().name())
                + result.figures().stream()
                        .map(figure -> ", " + figure(figure) + " " + figure.shown())
                        .collect(Collectors.joining());
    }

    /** What a figure is called. */
    String figure(Figure figure) {
        return own("figure." + figure.name()).map(Names::capital).orElseGet(() -> slot(new Slot(figure.name())));
    }

    /** A figure in the unit of the session and, where that is another one, in the unit of the SI. */
    String shown(Figure figure) {
        return figure.unit().equals(figure.siUnit()) ? figure.shown() : figure.shown() + " (" + figure.siShown() + ")";
    }

    /** What an event was taken to mean. */
    String understood(Understood understood) {
        return names.understood(understood);
    }

    /** The text of a caution without its signal word. */
    String caution(CautionRule rule) {
        return language.wording().shown(Message.of("caution." + ConstantName.of(rule)), UnitSetting.US);
    }

    /** A caution in a word or two. */
    String briefCaution(String name) {
        return names.caution(name);
    }

    /** The signal word of a caution. */
    String signal(Signal signal) {
        return names.constant("signal", signal);
    }

    /** What is wrong with a record. */
    String fault(RecordFault fault) {
        return sentences.fault(fault);
    }

    /** Where a replay differs from its record. */
    String difference(Difference found) {
        return sentences.difference(found);
    }

    /** That another version made a record that this one replays differently, and where. */
    String otherVersion(Verification verification, Difference found) {
        return sentences.otherVersion(verification, found);
    }

    /** The result of a verification, a sentence each. */
    List<String> sentences(Verification verification) {
        return sentences.sentences(verification);
    }

    /** A part of the program that takes part in a session. */
    String part(String part) {
        return sentences.part(part);
    }

    /** When a session began, to the minute, in the local time of a zone and in universal time. */
    String start(Instant at, ZoneId zone) {
        return language.start(at, zone);
    }

    /** What a report on a job is called. */
    String title(JobId job) {
        return label("title." + job.id());
    }

    /** A moment in the local time of a zone and in universal time. */
    String moment(Instant at, ZoneId zone) {
        return language.moment(at, zone);
    }
}
