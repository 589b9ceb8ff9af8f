package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.FunctionalFigures;
import readback.assistant.dialogue.outcome.Telling;
import readback.calc.measurement.Readings;
import readback.calc.name.ConstantName;
import readback.calc.procedure.FunctionalCheck;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** What a system that was charged by weight shows: from readings of its own, for those before the charge are stale. */
final class FunctionalJudge {

    private static final Map<Quantity, Slot> SLOTS = Map.of(
            Quantity.SUCTION_PRESSURE, Slots.FUNCTIONAL_SUCTION_PRESSURE,
            Quantity.SUCTION_LINE_TEMPERATURE, Slots.FUNCTIONAL_SUCTION_LINE,
            Quantity.LIQUID_PRESSURE, Slots.FUNCTIONAL_LIQUID_PRESSURE,
            Quantity.LIQUID_LINE_TEMPERATURE, Slots.FUNCTIONAL_LIQUID_LINE,
            Quantity.RETURN_DRY_BULB, Slots.FUNCTIONAL_RETURN,
            Quantity.SUPPLY_DRY_BULB, Slots.FUNCTIONAL_SUPPLY);

    private final Assessment assessment;

    FunctionalJudge(Assessment assessment) {
        this.assessment = assessment;
    }

    /** Empty while a reading was neither given nor passed over. */
    Optional<Announcement> figures() {
        if (!SLOTS.values().stream().allMatch(assessment::answered)) {
            return Optional.empty();
        }
        Readings readings = Readings.none();
        for (Slot slot : SLOTS.values()) {
            Optional<Reading> reading = assessment.reading(slot);
            if (reading.isPresent()) {
                readings = readings.with(reading.get());
            }
        }
        Readings measured = readings;
        return assessment
                .refrigerant()
                .map(refrigerant ->
                        FunctionalCheck.of(refrigerant, assessment.air(), measured, assessment.instruments()))
                .map(this::told);
    }

    private Announcement told(FunctionalCheck check) {
        Telling telling = new Telling();
        if (check.empty()) {
            telling.headline(Message.of("functional-check.not-made"));
        } else {
            telling.headline(
                    Message.of(check.unusual().isEmpty() ? "functional-check.usual" : "functional-check.unusual")
                            .with("figures", figures(check)));
            if (!check.unusual().isEmpty()) {
                telling.reason(Message.of("functional-check.look-again")
                        .with(
                                "figures",
                                new Fact.Listing(check.unusual().stream()
                                        .<Fact>map(each -> new Fact.Term(ConstantName.of(each)))
                                        .toList())));
            }
        }
        telling.reason(Message.of("functional-check.information"));
        return telling.of(FunctionalFigures.of(check));
    }

    private Fact figures(FunctionalCheck check) {
        List<Fact> figures = new ArrayList<>();
        check.superheat().ifPresent(value -> figures.add(figure(FunctionalCheck.Aspect.SUPERHEAT, value)));
        check.subcooling().ifPresent(value -> figures.add(figure(FunctionalCheck.Aspect.SUBCOOLING, value)));
        check.split().ifPresent(value -> figures.add(figure(FunctionalCheck.Aspect.SPLIT, value)));
        return new Fact.Listing(figures);
    }

    private Fact figure(FunctionalCheck.Aspect figure, TemperatureDifference value) {
        UnitSetting units = assessment.settings().units();
        return new Fact.Text(Message.of("functional-check.figure")
                .with("kind", new Fact.Term(ConstantName.of(figure)))
                .with("value", Fact.difference(value, units)));
    }
}
