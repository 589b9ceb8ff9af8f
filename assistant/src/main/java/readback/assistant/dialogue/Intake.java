package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import readback.assistant.dialogue.outcome.Objections;
import readback.calc.fluid.Catalogue;
import readback.calc.plausibility.Grade;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Takes values and choices into the sheet: refuses what cannot be, asks about what is odd, reads back the rest. */
final class Intake {

    static final String YES = "yes";
    static final String NO = "no";
    static final String DONE = Content.Option.DONE.option();

    /** What is moved between two measurements adds up; of everything else the latest value counts. */
    static final Set<Quantity> ADDS_UP = EnumSet.of(Quantity.REFRIGERANT_ADDED, Quantity.REFRIGERANT_RECOVERED);

    private final Flow flow;
    private final Waiting waiting;
    private final Doubts doubts;

    Intake(Flow flow, Waiting waiting, Doubts doubts) {
        this.flow = flow;
        this.waiting = waiting;
        this.doubts = doubts;
    }

    /** Values that were stated; doubtful ones were weakly heard. */
    void values(Draft draft, List<Reading> readings, boolean doubtful, boolean correction) {
        given(draft, readings.stream().map(Given::calledOut).toList(), doubtful, correction);
    }

    /** A value that a probe offers and the technician takes: graded and read back like one that was called out. */
    void offered(Draft draft, Given offer) {
        given(draft, List.of(offer), false, false);
    }

    private void given(Draft draft, List<Given> values, boolean doubtful, boolean correction) {
        List<Reading> readings = values.stream().map(Given::reading).toList();
        List<Fact> taken = new ArrayList<>();
        List<Pending> questions = new ArrayList<>();
        Objections objections = new Objections(draft.state().settings().units());
        for (Given value : values) {
            Reading reading = value.reading();
            Assessment assessment = draft.assessment();
            Grade grade = assessment.grade(reading);
            Optional<Message> early = correction
                    ? Optional.empty()
                    : flow.next(draft.state()).flatMap(asked -> waiting.tooEarly(draft, asked, reading));
            Optional<Message> otherwise = ProbeTalk.showsOtherwise(draft.state(), value);
            if (early.isPresent()) {
                draft.say(early.get());
            } else if (grade.refused().isPresent()) {
                draft.say(objections.refusal(reading, grade.refused().get()));
            } else if (ScaleSlots.wouldNotFall(assessment, flow.slotFor(draft.state(), reading.quantity()), reading)) {
                draft.say(notFallen(draft, reading));
            } else if (confirms(draft, reading, grade.doubted().isPresent(), doubtful)) {
                take(draft, value, true, taken, questions);
            } else if (grade.doubted().isPresent()) {
                questions.add(Pending.Confirm.of(
                        value, objections.question(reading, grade.doubted().get())));
            } else if (doubtful) {
                questions.add(Pending.Confirm.of(value, Objections.weaklyHeard(reading)));
            } else if (correction) {
                fill(draft, value, false);
                taken.add(Altitudes.stated(reading));
            } else if (otherwise.isPresent()) {
                questions.add(Pending.Confirm.of(value, otherwise.get()));
            } else {
                take(draft, value, false, taken, questions);
            }
        }
        readBack(draft, taken, correction);
        answeredBy(draft, readings);
        if (correction && !taken.isEmpty()) {
            values.forEach(value -> ProbeTalk.stillShows(draft.state(), value).ifPresent(draft::say));
        }
        if (!taken.isEmpty() && Cylinders.telling(readings)) {
            Cylinders.room(draft.assessment()).ifPresent(draft::say);
        }
        questions.addAll(doubts.stillOpen(draft, readings, taken.size()));
        draft.become(draft.conversation().questioning(questions));
        if (!taken.isEmpty()) {
            Humidity.of(draft.assessment(), readings).ifPresent(humidity -> humid(draft, humidity));
        }
    }

    /** The wet bulb is worked out where the humidity and the dry bulb of the return air are known. */
    private void humid(Draft draft, Humidity humidity) {
        Optional<Reading> wetBulb = humidity.wetBulb();
        wetBulb.ifPresent(reading -> fill(draft, Given.calledOut(reading), false));
        draft.say(wetBulb.map(reading -> Message.of("humidity.wet-bulb").with("value", new Fact.Stated(reading)))
                .orElseGet(() ->
                        Message.of(humidity.dryBulbKnown() ? "humidity.no-wet-bulb" : "humidity.needs-dry-bulb")));
    }

    /**
     * Repeating a value that is being asked about confirms it. But what was misheard once is easily misheard again: a
     * value that something speaks against takes a yes, and which of two was meant is not settled by a weak word.
     */
    private static boolean confirms(Draft draft, Reading reading, boolean odd, boolean weak) {
        return draft.conversation()
                .pending()
                .filter(pending -> pending.confirmedBy(reading))
                .filter(pending -> !odd && (!weak || pending.candidates().isEmpty()))
                .isPresent();
    }

    /**
     * Fills the slot and says so, with the value that had to go; or asks, where a second amount may add to the first.
     */
    private void take(Draft draft, Given value, boolean confirmed, List<Fact> taken, List<Pending> questions) {
        Reading reading = value.reading();
        Optional<Reading> before = standing(draft, reading);
        if (before.isPresent() && ADDS_UP.contains(reading.quantity())) {
            questions.add(new Pending.MovedAgain(
                    before.get(),
                    reading,
                    Message.of("moved-again.ask")
                            .with("again", new Fact.Stated(reading))
                            .with("before", Fact.amount(before.get()))));
            return;
        }
        fill(draft, value, confirmed);
        taken.add(stated(reading, before));
    }

    private static Fact stated(Reading reading, Optional<Reading> before) {
        return before.filter(old -> !old.equals(reading))
                .<Fact>map(old -> new Fact.Text(Message.of("readback.instead")
                        .with("value", Altitudes.stated(reading))
                        .with("before", Fact.amount(old))))
                .orElseGet(() -> Altitudes.stated(reading));
    }

    /** What fills the slot of the reading now. */
    private Optional<Reading> standing(Draft draft, Reading reading) {
        return draft.sheet()
                .answer(flow.slotFor(draft.state(), reading.quantity()))
                .flatMap(Sheet::readingOf)
                // what the scale told adds up with what is said besides
                .or(() -> draft.assessment()
                        .readings()
                        .find(reading.quantity())
                        .filter(found -> ADDS_UP.contains(reading.quantity())));
    }

    /** Why the weight cannot be taken: refrigerant that went in leaves a lighter cylinder. */
    private Message notFallen(Draft draft, Reading reading) {
        boolean first = flow.slotFor(draft.state(), reading.quantity()).equals(Slots.SCALE_BEFORE);
        Assessment assessment = draft.assessment();
        return Message.of("scale.not-fallen")
                .with(
                        "before",
                        Fact.amount(
                                first
                                        ? reading
                                        : assessment.reading(Slots.SCALE_BEFORE).orElse(reading)))
                .with(
                        "after",
                        Fact.amount(
                                first ? assessment.reading(Slots.SCALE_AFTER).orElse(reading) : reading));
    }

    private static void readBack(Draft draft, List<Fact> taken, boolean correction) {
        if (!taken.isEmpty()) {
            draft.say(readBack(taken, correction));
        }
    }

    private static Message readBack(List<Fact> taken, boolean correction) {
        return Message.of(correction ? "readback.corrected" : "readback").with("values", new Fact.Listing(taken));
    }

    private static Message readBack(Meaning.Choice choice) {
        return Message.of("readback.choice").with("option", named(choice));
    }

    /**
     * Whether the last words read the answer back that was given last, and no other value with it, and gave no verdict:
     * "no" denies it.
     */
    boolean readBackLast(Draft draft) {
        List<Message> said = draft.conversation().said();
        boolean verdict = Arrays.stream(Judged.values())
                .flatMap(judged -> draft.assessment().announcement(judged).stream())
                .flatMap(announcement -> announcement.messages().stream())
                .anyMatch(said::contains);
        return !verdict
                && draft.sheet()
                        .last()
                        .filter(edit -> edit.after().stream()
                                .flatMap(answer -> readBacks(edit, answer))
                                .anyMatch(said::contains))
                        .isPresent();
    }

    /** The ways in which an answer alone can have been read back. */
    private static Stream<Message> readBacks(History.Edit edit, Answer answer) {
        Optional<Reading> before = edit.before().flatMap(Sheet::readingOf);
        Stream<Message> value = Sheet.readingOf(answer).stream()
                .flatMap(reading -> Stream.of(
                        readBack(List.of(stated(reading, before)), false),
                        readBack(List.of(Altitudes.stated(reading)), true)));
        Stream<Message> option = answer instanceof Answer.Option chosen
                ? Stream.of(readBack(new Meaning.Choice(edit.slot().id(), chosen.option())))
                : Stream.of();
        return Stream.concat(value, option);
    }

    private void fill(Draft draft, Given value, boolean confirmed) {
        Slot slot = flow.slotFor(draft.state(), value.reading().quantity());
        draft.become(draft.sheet()
                .with(slot, new Answer.Value(draft.state().at(), value.reading(), confirmed, value.probe())));
        draft.become(draft.conversation().revisiting(Optional.empty()));
    }

    /** An option of a choice set. */
    void choice(Draft draft, Meaning.Choice choice) {
        option(draft, new Slot(choice.choice()), choice.option());
        draft.say(readBack(choice));
    }

    private static Fact named(Meaning.Choice choice) {
        return Optional.of(choice.option())
                .filter(option -> choice.choice().equals(Slots.REFRIGERANT.id()))
                .flatMap(option -> Catalogue.standard().find(option).known())
                .<Fact>map(refrigerant -> new Fact.Refrigerant(refrigerant.designation()))
                .orElseGet(() -> new Fact.Term(choice.choice() + "." + choice.option()));
    }

    /** A value that answers the question that is asked: a running time, whether it ran long enough. */
    private void answeredBy(Draft draft, List<Reading> readings) {
        Optional<Step> asked = flow.next(draft.state());
        Optional<Task.Told> told = asked.flatMap(step -> step.task().toldBy());
        boolean answers = told.filter(each -> draft.sheet()
                        .reading(each.quantity())
                        .filter(readings::contains)
                        .isPresent())
                .isPresent();
        if (answers) {
            boolean no = told.get().no().holds(draft.assessment());
            word(draft, asked.get(), no ? NO : YES);
        }
    }

    /** A yes, no or done, with what it tells about another slot, and the remedy where only a yes will do. */
    void word(Draft draft, Step step, String word) {
        option(draft, step.slot(), word);
        if (word.equals(YES)) {
            // five minutes were told, and now it has run long enough
            step.task()
                    .toldBy()
                    .filter(told -> told.no().holds(draft.assessment()))
                    .ifPresent(told -> draft.become(draft.sheet().without(Slot.of(told.quantity()))));
        }
        if (step.readingsAnew()) {
            measureAnew(draft);
        }
        if (step.task().advised() || (step.task().mustBeYes() && word.equals(NO))) {
            draft.say(step.text(word.equals(NO) ? ".no" : ".yes"));
        }
        step.conclusion().ifPresent(conclusion -> {
            Optional<String> concluded = word.equals(NO) ? conclusion.no() : conclusion.yes();
            concluded.ifPresent(
                    each -> choice(draft, new Meaning.Choice(conclusion.slot().id(), each)));
        });
    }

    /** What was read before the system was changed tells nothing about it now. */
    private void measureAnew(Draft draft) {
        draft.become(draft.sheet().withoutAll(flow.repeatedSlots(draft.state())));
        draft.become(draft.state().withdrawing(Judged.CHARGE));
    }

    private static void option(Draft draft, Slot slot, String option) {
        draft.become(draft.sheet().with(slot, new Answer.Option(draft.state().at(), option)));
        draft.become(draft.conversation().revisiting(Optional.empty()));
    }

    /** The answer to our own question; false when the meaning is no answer to it. */
    boolean answered(Draft draft, Pending pending, Meaning meaning) {
        doubts.passBy(draft, meaning);
        if (!draft.conversation().pending().equals(Optional.of(pending))) {
            return false;
        }
        return pending.fold(new Pending.Cases<>() {
            @Override
            public Boolean confirm(Pending.Confirm confirm) {
                return confirmed(draft, confirm, meaning) || dropped(draft, confirm, meaning);
            }

            @Override
            public Boolean between(Pending.Between between) {
                return dropped(draft, between, meaning);
            }

            @Override
            public Boolean movedAgain(Pending.MovedAgain moved) {
                return Intake.this.movedAgain(draft, moved, meaning);
            }

            @Override
            public Boolean leave(Pending.Leave leave) {
                return false;
            }

            @Override
            public Boolean goTo(Pending.GoTo goTo) {
                if (meaning.order().isEmpty()) {
                    Doubts.dropJob(draft);
                }
                return false;
            }
        });
    }

    /** Yes takes the value; false when the meaning is something else. */
    private boolean confirmed(Draft draft, Pending.Confirm confirm, Meaning meaning) {
        if (!meaning.orders(Command.YES)) {
            return false;
        }
        draft.become(draft.conversation().answered());
        List<Fact> taken = new ArrayList<>();
        List<Pending> questions = new ArrayList<>();
        take(draft, confirm.given(), true, taken, questions);
        readBack(draft, taken, false);
        answeredBy(draft, List.of(confirm.reading()));
        questions.forEach(question -> draft.become(draft.conversation().questioningFirst(question)));
        return true;
    }

    /** No drops the value; false when the meaning is something else. */
    private boolean dropped(Draft draft, Pending.Doubt doubt, Meaning meaning) {
        if (meaning.orders(Command.NO) || meaning.orders(Command.SCRATCH_THAT) || meaning.orders(Command.SKIP)) {
            draft.say(standing(draft, doubt.reading())
                    .map(Intake::kept)
                    .orElseGet(() -> Message.of("confirm.dropped")
                            .with("name", Fact.name(doubt.reading().quantity()))));
            draft.become(draft.conversation().answered());
            return true;
        }
        // "Understood" says that words were heard, not that a value is right: the question is asked again.
        return meaning.orders(Command.DONE)
                && draft.state().warnings().unheeded().isEmpty();
    }

    private static Message kept(Reading before) {
        return Message.of("confirm.kept").with("before", new Fact.Stated(before));
    }

    /** The second amount adds to the first, takes its place, or is dropped; only these settle the question. */
    private boolean movedAgain(Draft draft, Pending.MovedAgain moved, Meaning meaning) {
        if (meaning instanceof Meaning.Choice choice && moved.choice().equals(Optional.of(choice.choice()))) {
            Reading now = choice.equals(Pending.MovedAgain.SAID_MORE) ? moved.sum() : moved.again();
            fill(draft, Given.calledOut(now), true);
            draft.say(Message.of("moved-again.in-all").with("value", new Fact.Stated(now)));
            waiting.startAgain(draft);
        } else if (meaning.orders(Command.SCRATCH_THAT)) {
            draft.say(kept(moved.before()));
        } else {
            return meaning.orders(Command.YES) || meaning.orders(Command.NO) || meaning.orders(Command.SKIP);
        }
        draft.become(draft.conversation().answered());
        return true;
    }
}
