package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.charge.Grade;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Takes values and choices into the sheet: refuses what cannot be, asks about what is odd, reads back the rest. */
final class Intake {

    static final String YES = "yes";
    static final String NO = "no";
    static final String DONE = "done";

    private final Flow flow;
    private final Waiting waiting;

    Intake(Flow flow, Waiting waiting) {
        this.flow = flow;
        this.waiting = waiting;
    }

    /** Values that were stated; doubtful ones were weakly heard. */
    void values(Draft draft, List<Reading> readings, boolean doubtful, boolean correction) {
        List<Reading> taken = new ArrayList<>();
        List<Pending.Confirm> questions = new ArrayList<>();
        Objections objections = new Objections(draft.state().settings().units());
        for (Reading reading : readings) {
            Assessment assessment = draft.assessment();
            Grade grade = assessment.grade(reading);
            Optional<Message> early = correction
                    ? Optional.empty()
                    : flow.next(draft.state()).flatMap(asked -> waiting.tooEarly(draft, asked, reading));
            if (early.isPresent()) {
                draft.say(early.get());
            } else if (grade instanceof Grade.Impossible impossible) {
                draft.say(objections.refusal(reading, impossible.refusal()));
            } else if (saidBefore(draft, reading)) {
                taken.add(reading);
                fill(draft, reading, true);
            } else if (grade instanceof Grade.Unusual unusual) {
                questions.add(new Pending.Confirm(reading, objections.question(reading, unusual.doubt()), List.of()));
            } else if (doubtful) {
                questions.add(new Pending.Confirm(reading, Objections.weaklyHeard(reading), List.of()));
            } else {
                taken.add(reading);
                fill(draft, reading, false);
            }
        }
        readBack(draft, taken, correction);
        questions.addAll(stillOpen(draft, readings));
        if (!otherQuestion(draft, readings)) {
            ask(draft, questions);
        }
    }

    /** Repeating a value that is being asked about confirms it. */
    private static boolean saidBefore(Draft draft, Reading reading) {
        Pending pending = draft.conversation().pending().orElse(null);
        if (pending instanceof Pending.Between between) {
            return between.candidates().contains(reading);
        }
        return pending instanceof Pending.Confirm confirm && confirm.reading().equals(reading);
    }

    /** Questions about other quantities than these stay open; nothing asked is lost because something else was said. */
    private static List<Pending.Confirm> stillOpen(Draft draft, List<Reading> readings) {
        if (!(draft.conversation().pending().orElse(null) instanceof Pending.Confirm confirm)) {
            return List.of();
        }
        List<Pending.Confirm> open = new ArrayList<>();
        open.add(confirm);
        open.addAll(confirm.waiting());
        open.removeIf(each -> readings.stream()
                .anyMatch(reading -> reading.quantity() == each.reading().quantity()));
        return open;
    }

    private static boolean otherQuestion(Draft draft, List<Reading> readings) {
        return draft.conversation().pending().orElse(null) instanceof Pending.Between between
                && readings.stream()
                        .noneMatch(each ->
                                each.quantity() == between.candidates().get(0).quantity());
    }

    private static void ask(Draft draft, List<Pending.Confirm> questions) {
        draft.become(draft.conversation()
                .with(
                        questions.isEmpty()
                                ? Optional.empty()
                                : Optional.of(new Pending.Confirm(
                                        questions.get(0).reading(),
                                        questions.get(0).question(),
                                        questions.subList(1, questions.size())))));
    }

    private static void readBack(Draft draft, List<Reading> taken, boolean correction) {
        if (!taken.isEmpty()) {
            List<Fact> stated = taken.stream().<Fact>map(Fact.Stated::new).toList();
            draft.say(Message.of(correction ? "readback.corrected" : "readback")
                    .with("values", new Fact.Listing(stated)));
        }
    }

    private void fill(Draft draft, Reading reading, boolean confirmed) {
        String slot = flow.slotFor(draft.state(), reading.quantity());
        draft.become(draft.sheet().with(slot, new Answer.Value(draft.state().at(), reading, confirmed)));
        draft.become(draft.conversation().revisiting(Optional.empty()));
    }

    /** An option of a choice set. */
    void choice(Draft draft, Meaning.Choice choice) {
        option(draft, choice.choice(), choice.option());
        draft.say(Message.of("readback.choice").with("option", named(choice)));
    }

    private static Fact named(Meaning.Choice choice) {
        if (choice.choice().equals(Assessment.REFRIGERANT)
                && Catalogue.standard().find(choice.option()) instanceof Lookup.Found found) {
            return new Fact.Named(
                    found.refrigerant().designation(),
                    "r " + found.refrigerant().spokenNames().get(0));
        }
        return new Fact.Term(choice.choice() + "." + choice.option());
    }

    /** A yes, no or done, with what it tells about another slot. */
    void word(Draft draft, Step step, String word) {
        option(draft, step.slot(), word);
        if (step.task() instanceof Task.Question question && question.advised()) {
            draft.say(Message.of("step." + step.id() + (word.equals(NO) ? ".no" : ".yes")));
        }
        step.conclusion().ifPresent(conclusion -> {
            Optional<String> concluded = word.equals(NO) ? conclusion.no() : conclusion.yes();
            concluded.ifPresent(each -> choice(draft, new Meaning.Choice(conclusion.slot(), each)));
        });
    }

    private static void option(Draft draft, String slot, String option) {
        draft.become(draft.sheet().with(slot, new Answer.Option(draft.state().at(), option)));
        draft.become(draft.conversation().revisiting(Optional.empty()));
    }

    /** The answer to our own question; false when the meaning is no answer to it. */
    boolean answered(Draft draft, Pending pending, Meaning meaning) {
        boolean no = isOrder(meaning, Command.NO) || isOrder(meaning, Command.SCRATCH_THAT);
        if (pending instanceof Pending.Confirm confirm) {
            if (isOrder(meaning, Command.YES) || isOrder(meaning, Command.DONE)) {
                fill(draft, confirm.reading(), true);
                readBack(draft, List.of(confirm.reading()), false);
                ask(draft, confirm.waiting());
                return true;
            }
            if (no) {
                dropped(draft, confirm.reading());
                ask(draft, confirm.waiting());
                return true;
            }
        } else if (pending instanceof Pending.Between between && no) {
            dropped(draft, between.candidates().get(0));
            draft.become(draft.conversation().with(Optional.empty()));
            return true;
        }
        return false;
    }

    private static void dropped(Draft draft, Reading reading) {
        draft.say(Message.of("confirm.dropped").with("name", Fact.name(reading.quantity())));
    }

    static boolean isOrder(Meaning meaning, Command command) {
        return meaning instanceof Meaning.Ordered ordered && ordered.command() == command;
    }
}
