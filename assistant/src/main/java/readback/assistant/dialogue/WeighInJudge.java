package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.dialogue.outcome.JudgementMessages;
import readback.assistant.dialogue.outcome.Telling;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The outcomes of the weigh-in: what is to go in, then what went in. */
final class WeighInJudge {

    private final Assessment assessment;
    private final UnitSetting units;

    WeighInJudge(Assessment assessment) {
        this.assessment = assessment;
        this.units = assessment.settings().units();
    }

    private Optional<WeighIn.Target> worked() {
        Optional<Reading> nameplate = assessment.readings().find(Quantity.NAMEPLATE_CHARGE);
        Optional<Reading> tube = assessment.readings().find(Quantity.LIQUID_TUBE_SIZE);
        Optional<Reading> length = assessment.readings().find(Quantity.LINE_LENGTH);
        Optional<Reading> included = assessment.readings().find(Quantity.INCLUDED_LINE_LENGTH);
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        Optional<String> drier = assessment.option(Slots.FILTER_DRIER_ADDED);
        if (nameplate.isEmpty()
                || tube.isEmpty()
                || length.isEmpty()
                || included.isEmpty()
                || refrigerant.isEmpty()
                || drier.isEmpty()) {
            return Optional.empty();
        }
        // of a line that is not there any size will do
        Reading includedTube = assessment.reading(Slots.INCLUDED_TUBE_SIZE).orElse(tube.get());
        return Optional.of(WeighIn.target(
                refrigerant.get(),
                Mass.kilograms(nameplate.get().base()),
                new WeighIn.Line(tube.get().base(), length.get().base()),
                new WeighIn.Line(includedTube.base(), included.get().base()),
                drier.get().equals(Intake.YES) ? 1 : 0));
    }

    /** What is to be weighed in; empty while a value is missing or where there is no figure. */
    Optional<WeighIn.Target.Charge> charge() {
        return worked().flatMap(WeighIn.Target::charge);
    }

    Optional<Announcement> target() {
        return worked().map(target -> target.fold(new WeighIn.Target.Cases<>() {
            @Override
            public Announcement charge(WeighIn.Target.Charge charge) {
                return WeighInJudge.this.charge(charge);
            }

            @Override
            public Announcement unknownTube(WeighIn.Target.UnknownTube unknown) {
                return new Announcement(
                        new JobOutcome.ToWeighIn(new JobOutcome.ToWeighIn.Amount.UnknownTube()),
                        Message.of("weigh-in.unknown-tube"));
            }

            @Override
            public Announcement nothingLeft(WeighIn.Target.NothingLeft nothing) {
                return new Announcement(
                        new JobOutcome.ToWeighIn(new JobOutcome.ToWeighIn.Amount.NothingLeft()),
                        Message.of("weigh-in.impossible"));
            }
        }));
    }

    private Announcement charge(WeighIn.Target.Charge charge) {
        double line = charge.adjustment().kilograms();
        Telling telling = new Telling();
        telling.headline(Message.of("weigh-in.total").with("amount", mass(charge.total())));
        telling.number(
                line == 0
                        ? Message.of("weigh-in.adjustment.none")
                        : Message.of("weigh-in.adjustment." + (line < 0 ? "less" : "more"))
                                .with("amount", mass(charge.adjustment().times(Math.signum(line)))));
        if (assessment
                .option(Slots.FILTER_DRIER_ADDED)
                .filter(Intake.YES::equals)
                .isPresent()) {
            telling.number(Message.of("weigh-in.filter-drier")
                    .with("amount", mass(readback.calc.procedure.LineCharge.FILTER_DRIER)));
        }
        telling.reason(
                Message.of(charge.basis() == WeighIn.Basis.PUBLISHED ? "weigh-in.published" : "weigh-in.computed"));
        return telling.of(
                new JobOutcome.ToWeighIn(new JobOutcome.ToWeighIn.Amount.Grams(JobOutcome.grams(charge.total()))));
    }

    Optional<Announcement> weighed() {
        if (worked().filter(target -> target.charge().isEmpty()).isPresent()) {
            return Optional.of(new Announcement(new JobOutcome.WeighedIn(Optional.empty()), List.of(), List.of()));
        }
        Optional<Reading> added = assessment.readings().find(Quantity.REFRIGERANT_ADDED);
        return charge().flatMap(charge -> added.map(reading -> {
            Mass in = Mass.kilograms(reading.base());
            Mass off = in.minus(charge.total());
            WeighIn.Outcome outcome = WeighIn.judge(charge.total(), in);
            Telling telling = new Telling();
            telling.headline(Message.of("weighed-in." + ConstantName.of(outcome))
                    .with("off", mass(off.times(Math.signum(off.kilograms()))))
                    .with("target", mass(charge.total())));
            if (assessment.reading(Slot.of(Quantity.REFRIGERANT_ADDED)).isEmpty()) {
                telling.number(Message.of("weighed-in.by-scale").with("amount", mass(in)));
            }
            return telling.of(JobOutcome.WeighedIn.of(outcome, in, charge.total()));
        }));
    }

    private Fact mass(Mass mass) {
        return JudgementMessages.mass(mass, units);
    }
}
