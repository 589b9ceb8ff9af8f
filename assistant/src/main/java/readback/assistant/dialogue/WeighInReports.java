package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The outcomes of the weigh-in: what is to go in, then what went in. */
final class WeighInReports {

    private final Assessment assessment;
    private final UnitSetting units;

    WeighInReports(Assessment assessment) {
        this.assessment = assessment;
        this.units = assessment.settings().units();
    }

    private Optional<WeighIn.Target> worked() {
        Optional<Reading> nameplate = assessment.readings().find(Quantity.NAMEPLATE_CHARGE);
        Optional<Reading> tube = assessment.readings().find(Quantity.LIQUID_TUBE_SIZE);
        Optional<Reading> length = assessment.readings().find(Quantity.LINE_LENGTH);
        Optional<Reading> included = assessment.readings().find(Quantity.INCLUDED_LINE_LENGTH);
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        Optional<String> drier = assessment.option("filter-drier-added");
        if (nameplate.isEmpty()
                || tube.isEmpty()
                || length.isEmpty()
                || included.isEmpty()
                || refrigerant.isEmpty()
                || drier.isEmpty()) {
            return Optional.empty();
        }
        // of a line that is not there any size will do
        Reading includedTube = assessment.reading("included-tube-size").orElse(tube.get());
        return Optional.of(WeighIn.target(
                refrigerant.get(),
                Mass.kilograms(nameplate.get().base()),
                new WeighIn.Line(tube.get().base(), length.get().base()),
                new WeighIn.Line(includedTube.base(), included.get().base()),
                drier.get().equals(Intake.YES) ? 1 : 0));
    }

    /** What is to be weighed in; empty while a value is missing or where there is no figure. */
    Optional<WeighIn.Target.Charge> charge() {
        return worked().filter(WeighIn.Target.Charge.class::isInstance).map(WeighIn.Target.Charge.class::cast);
    }

    Optional<Report> target() {
        return worked().map(target -> {
            if (target instanceof WeighIn.Target.Charge charge) {
                return charge(charge);
            }
            return target instanceof WeighIn.Target.UnknownTube
                    ? new Report("weigh-in unknown-tube", List.of(Message.of("weigh-in.unknown-tube")))
                    : new Report("weigh-in impossible", List.of(Message.of("weigh-in.impossible")));
        });
    }

    private Report charge(WeighIn.Target.Charge charge) {
        double line = charge.adjustment().kilograms();
        List<Message> messages = new ArrayList<>();
        messages.add(Message.of("weigh-in.adjustment." + (line < 0 ? "less" : "more"))
                .with("amount", mass(charge.adjustment().times(Math.signum(line)))));
        if (assessment.option("filter-drier-added").filter(Intake.YES::equals).isPresent()) {
            messages.add(Message.of("weigh-in.filter-drier")
                    .with("amount", mass(readback.calc.procedure.LineCharge.FILTER_DRIER)));
        }
        messages.add(Message.of("weigh-in.total").with("amount", mass(charge.total())));
        messages.add(
                Message.of(charge.basis() == WeighIn.Basis.PUBLISHED ? "weigh-in.published" : "weigh-in.computed"));
        return new Report("weigh-in " + grams(charge.total()), messages);
    }

    Optional<Report> weighed() {
        if (worked().filter(target -> !(target instanceof WeighIn.Target.Charge))
                .isPresent()) {
            return Optional.of(new Report("weighed-in nothing", List.of()));
        }
        Optional<Reading> added = assessment.readings().find(Quantity.REFRIGERANT_ADDED);
        return charge().flatMap(charge -> added.map(reading -> {
            Mass in = Mass.kilograms(reading.base());
            Mass off = in.minus(charge.total());
            String outcome = ConstantName.of(WeighIn.judge(charge.total(), in));
            List<Message> messages = new ArrayList<>();
            if (assessment.reading(Quantity.REFRIGERANT_ADDED.name()).isEmpty()) {
                messages.add(Message.of("weighed-in.by-scale").with("amount", mass(in)));
            }
            messages.add(Message.of("weighed-in." + outcome)
                    .with("off", mass(off.times(Math.signum(off.kilograms()))))
                    .with("target", mass(charge.total())));
            return new Report("weighed-in " + outcome + " " + grams(in) + " target=" + grams(charge.total()), messages);
        }));
    }

    private Fact mass(Mass mass) {
        return JudgementMessages.mass(mass, units);
    }

    private static String grams(Mass mass) {
        return Math.round(mass.kilograms() * 1000) + "g";
    }
}
