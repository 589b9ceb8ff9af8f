package readback.assistant.language;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.dialogue.ReasonMessage;
import readback.assistant.dialogue.Understood;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.grammar.Meaning;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** What an event was taken to mean, as a message for a reader. */
final class UnderstoodMessage {

    private UnderstoodMessage() {}

    static Message of(Understood understood, Names names) {
        if (understood instanceof Understood.Occurrence occurrence) {
            return Message.of("term.occurrence." + ConstantName.of(occurrence));
        }
        if (understood instanceof Understood.Elapsed elapsed) {
            return names.slotOfTimer(elapsed.timer())
                    .map(slot -> Message.of("understood.elapsed").with("slot", new Fact.Term("slot." + slot.id())))
                    .orElseGet(() -> Message.of("term.occurrence.silence"));
        }
        if (understood instanceof Understood.ClockChanged changed) {
            return Message.of("understood.clock-changed").with("by", new Fact.Quoted(Names.clock(changed.by())));
        }
        if (understood instanceof Understood.Meant meant) {
            return of(meant.words(), names);
        }
        if (understood instanceof Understood.Between between) {
            List<Fact> candidates = new ArrayList<>();
            between.candidates().forEach(each -> candidates.add(new Fact.Text(of(each, names))));
            return Message.of("understood.between").with("candidates", new Fact.Listing(candidates));
        }
        return Message.of("understood.ignored")
                .with("why", new Fact.Term("ignored." + ConstantName.of(((Understood.Ignored) understood).why())));
    }

    private static Message of(Meaning meaning, Names names) {
        return meaning.fold(new Meaning.Cases<>() {
            @Override
            public Message values(Meaning.Values values) {
                return Message.of("understood.values").with("values", readings(values.readings()));
            }

            @Override
            public Message correction(Meaning.Correction correction) {
                return Message.of("understood.correction").with("values", readings(correction.readings()));
            }

            @Override
            public Message choice(Meaning.Choice choice) {
                return Message.of("understood.choice")
                        .with("choice", new Fact.Quoted(names.slot(new Slot(choice.choice()))))
                        .with("option", new Fact.Quoted(names.option(choice.choice(), choice.option())));
            }

            @Override
            public Message choices(Meaning.Choices choices) {
                List<Fact> each = new ArrayList<>();
                choices.choices().forEach(choice -> each.add(new Fact.Text(of(choice, names))));
                return Message.of("understood.choices").with("choices", new Fact.Listing(each));
            }

            @Override
            public Message ordered(Meaning.Ordered ordered) {
                Fact order = new Fact.Term("order." + ConstantName.of(ordered.command()));
                return ordered.about()
                        .map(quantity -> Message.of("understood.order-about")
                                .with("order", order)
                                .with("about", Fact.name(quantity)))
                        .orElseGet(() -> Message.of("understood.order").with("order", order));
            }

            @Override
            public Message note(Meaning.Note note) {
                return Message.of("understood.note").with("words", new Fact.Quoted(note.words()));
            }

            @Override
            public Message saturationQuestion(Meaning.SaturationQuestion question) {
                return Message.of("understood.saturation").with("value", Fact.amount(question.pressure()));
            }

            @Override
            public Message probeNamed(Meaning.ProbeNamed named) {
                return Message.of("understood.probe-named")
                        .with("number", new Fact.Count(named.number()))
                        .with("name", Fact.name(named.quantity()));
            }

            @Override
            public Message mentioned(Meaning.Mentioned mentioned) {
                return Message.of("understood.mentioned")
                        .with(
                                "option",
                                new Fact.Quoted(names.option(
                                        mentioned.of().choice(), mentioned.of().option())));
            }

            @Override
            public Message notUnderstood(Meaning.NotUnderstood not) {
                return Message.of("understood.not-understood").with("why", new Fact.Text(ReasonMessage.of(not.why())));
            }
        });
    }

    private static Fact readings(List<Reading> readings) {
        List<Fact> facts = new ArrayList<>();
        readings.forEach(each -> facts.add(new Fact.Stated(each)));
        return new Fact.Listing(facts);
    }
}
