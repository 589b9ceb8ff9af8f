package readback.assistant.dialogue;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.assistant.dialogue.outcome.RoundedFacts;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Situation;
import readback.calc.fluid.SafetyClass;
import readback.calc.measurement.Readings;
import readback.calc.procedure.RecoveryCylinder;
import readback.calc.procedure.RecoveryLevel;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The cylinder that takes what is recovered, and how deep a circuit is recovered before it is opened. */
final class Cylinders {

    /** What the stamps and the scale tell of it. */
    private static final Set<Quantity> TELLING =
            EnumSet.of(Quantity.CYLINDER_WATER_CAPACITY, Quantity.CYLINDER_EMPTY_WEIGHT, Quantity.CYLINDER_WEIGHT);

    private Cylinders() {}

    /** Whether one of these tells about the cylinder. */
    static boolean telling(List<Reading> readings) {
        return readings.stream().map(Reading::quantity).anyMatch(TELLING::contains);
    }

    /** What still fits; empty while a stamp, the weight or the refrigerant is not known. */
    static Optional<Message> room(Assessment assessment) {
        return cylinder(assessment)
                .flatMap(cylinder -> mass(assessment, Quantity.CYLINDER_WEIGHT).map(cylinder::room))
                .map(room -> Message.of("cylinder.room")
                        .with(
                                "room",
                                RoundedFacts.mass(room, assessment.settings().units())));
    }

    /** The caution about a cylinder at its limit. */
    static List<Caution> cautions(Assessment assessment) {
        return cylinder(assessment)
                .flatMap(cylinder -> mass(assessment, Quantity.CYLINDER_WEIGHT).map(cylinder::share))
                .map(share -> CautionFinder.in(new Situation.Recovering(assessment.refrigerant(), share)).stream()
                        .filter(caution -> caution.rule() == CautionRule.CYLINDER_OVERFILL)
                        .toList())
                .orElse(List.of());
    }

    private static Optional<RecoveryCylinder> cylinder(Assessment assessment) {
        return assessment
                .refrigerant()
                .flatMap(refrigerant -> mass(assessment, Quantity.CYLINDER_WATER_CAPACITY)
                        .flatMap(water -> mass(assessment, Quantity.CYLINDER_EMPTY_WEIGHT)
                                .flatMap(empty -> RecoveryCylinder.of(refrigerant, water, empty))));
    }

    private static Optional<Mass> mass(Assessment assessment, Quantity quantity) {
        Readings readings = assessment.readings();
        return readings.find(quantity)
                .map(Reading::base)
                .filter(kilograms -> kilograms > 0)
                .map(Mass::kilograms);
    }

    /** How deep to recover; empty where the refrigerant is not known or burns so readily that other rules hold. */
    static Optional<Message> depth(Assessment assessment) {
        return assessment
                .refrigerant()
                .filter(refrigerant -> refrigerant.safetyClass() != SafetyClass.A3)
                .map(refrigerant -> RecoveryLevel.required(
                        RecoveryLevel.pressureClass(refrigerant),
                        mass(assessment, Quantity.NAMEPLATE_CHARGE).orElse(Mass.NONE)))
                .map(Cylinders::depth);
    }

    private static Message depth(GaugePressure level) {
        double inches = level.inchesOfMercuryVacuum();
        return inches <= 0
                ? Message.of("recovery.to-zero")
                : Message.of("recovery.to-vacuum")
                        .with(
                                "level",
                                new Fact.Amount(BigDecimal.valueOf(Math.round(inches)), Unit.INCH_MERCURY_VACUUM));
    }
}
