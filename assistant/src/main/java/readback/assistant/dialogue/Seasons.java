package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.ApplicableTest;
import readback.assistant.dialogue.outcome.RoundedFacts;
import readback.calc.applicability.Applicability;
import readback.calc.applicability.CircuitParts;
import readback.calc.applicability.Circumstances;
import readback.calc.applicability.SystemKind;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Correction;
import readback.calc.commissioning.CoilDifference;
import readback.calc.condition.ConditionCheck;
import readback.calc.condition.WinterSetUp;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.name.ConstantName;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.text.Message;

/** What system and season have to do with the work: which check applies, and the restrictor of the winter set-up. */
final class Seasons {

    private static final String MATTERS = "matters-";
    private static final String WEATHER = "weather-for-restrictor";
    private static final String TO_MOVE = "restrictor-to-move";
    private static final String SETTLES_LONGER = "settles-longer";

    /** Jobs in which a cold day is nothing unusual. */
    private static final Set<JobId> OF_COLD_DAYS = Set.of(JobId.WHICH_CHECK, JobId.WINTER_SET_UP);

    private Seasons() {}

    /** Whether a finding of this name is told here. */
    static boolean tells(String finding) {
        return finding.equals(WEATHER)
                || finding.equals(TO_MOVE)
                || finding.equals(SETTLES_LONGER)
                || fact(finding).isPresent();
    }

    /** Whether the finding holds now; false for the names of others. */
    static boolean found(Assessment assessment, String finding) {
        return switch (finding) {
            case WEATHER -> forRestrictor(assessment);
            case TO_MOVE ->
                pressures(assessment)
                        .filter(held -> held.outcome() != WinterSetUp.Outcome.HOLD)
                        .isPresent();
            case SETTLES_LONGER ->
                assessment
                                .parts()
                                .change()
                                .settling()
                                .compareTo(CircuitParts.USUAL.change().settling())
                        > 0;
            default ->
                fact(finding)
                        .filter(fact -> Applicability.dependsOn(fact, circumstances(assessment)))
                        .isPresent();
        };
    }

    /** What the parts of the circuit warn of, and a condenser that works harder than its efficiency lets expect. */
    static List<Caution> cautions(Assessment assessment) {
        List<Caution> cautions = new ArrayList<>();
        if (assessment.parts().change().pumpDownMayOverfill()) {
            cautions.add(CautionRule.LITTLE_ROOM_IN_CONDENSER.caution());
        }
        if (assessment.system().filter(system -> !system.condenserRestricted()).isPresent()
                && assessment
                        .judgement()
                        .flatMap(judgement -> CoilDifference.condensing(
                                judgement,
                                assessment.readings(),
                                assessment.system().flatMap(SystemUnderTest::efficiency)))
                        .filter(CoilDifference.Usual.ABOVE::equals)
                        .isPresent()) {
            cautions.add(CautionRule.CONDENSING_FAR_OVER_OUTDOOR.caution());
        }
        return cautions;
    }

    /** What the parts of the circuit mean for a charge that was compared with its target. */
    static List<Message> ofCharge(Assessment assessment, Correction correction) {
        CircuitParts.Change change = assessment.parts().change();
        List<Message> told = new ArrayList<>();
        if (change.stepShare() < 1 && correction.next().kilograms() != 0) {
            told.add(Message.of("correction.micro-channel"));
        }
        if (change.hidesSurplus()) {
            told.add(Message.of("correction.accumulator"));
        }
        return told;
    }

    private static Optional<Applicability.Fact> fact(String finding) {
        return finding.startsWith(MATTERS)
                ? ConstantName.find(Applicability.Fact.class, finding.substring(MATTERS.length()))
                : Optional.empty();
    }

    private static boolean forRestrictor(Assessment assessment) {
        return assessment
                .readings()
                .temperature(Quantity.OUTDOOR_TEMPERATURE)
                .filter(ConditionCheck::forRestrictor)
                .isPresent();
    }

    /** Whether a restrictor was put on the condenser: what is read then was read with it. */
    static boolean restrictorOn(Sheet sheet) {
        return sheet.option(Slots.RESTRICTOR_ON).isPresent();
    }

    /** Whether it has to come off before anybody leaves. */
    static boolean restrictorToTakeOff(Sheet sheet) {
        return restrictorOn(sheet)
                && sheet.option(Slots.RESTRICTOR_OFF).filter(Intake.YES::equals).isEmpty();
    }

    /** Whether a value is that of a system that heats, or of a day on which it would. */
    static boolean heats(Assessment assessment, Quantity quantity) {
        JobId job = assessment.job();
        return job.equals(JobId.HEATING_CHECK)
                || job.equals(JobId.HEATER_AIRFLOW)
                || (quantity == Quantity.OUTDOOR_TEMPERATURE && OF_COLD_DAYS.contains(job));
    }

    /**
     * What speaks against a value that a hold begins with; empty where nothing is to be said but that it is too early.
     */
    static Optional<Message> objection(Assessment assessment, Step step) {
        return Optional.of(step)
                .filter(each -> each.slot().equals(Slots.WINTER_LIQUID))
                .flatMap(each -> pressures(assessment))
                .map(held -> Message.of("winter." + ConstantName.of(held.outcome()))
                        .with("difference", difference(assessment, held.difference()))
                        .with("low", difference(assessment, held.band().low()))
                        .with("high", difference(assessment, held.band().high())));
    }

    private static readback.prompts.text.Fact difference(Assessment assessment, double pascals) {
        return RoundedFacts.pressureDifference(
                GaugePressure.pascals(pascals), assessment.settings().units());
    }

    /** The two pressures that the restrictor holds apart, as they were called out last. */
    private static Optional<WinterSetUp.Result> pressures(Assessment assessment) {
        return assessment
                .reading(Slots.WINTER_LIQUID)
                .flatMap(liquid -> assessment
                        .reading(Slots.WINTER_SUCTION)
                        .flatMap(suction -> assessment
                                .refrigerant()
                                .map(refrigerant -> WinterSetUp.judge(
                                        refrigerant,
                                        liquid.gaugePressure(),
                                        suction.gaugePressure(),
                                        assessment.air()))));
    }

    /** Which check applies; empty while that depends on what is not known. */
    static Optional<Announcement> applicable(Assessment assessment) {
        return Applicability.of(circumstances(assessment))
                .map(test -> new Announcement(new ApplicableTest(test), Message.of("which." + ConstantName.of(test))));
    }

    private static Circumstances circumstances(Assessment assessment) {
        Sheet sheet = assessment.sheet();
        return new Circumstances(
                yes(sheet, Slots.MAKERS_PROCEDURE),
                yes(sheet, Slots.CIRCUIT_OPENED),
                sheet.option(Slots.SYSTEM_KIND).flatMap(option -> ConstantName.find(SystemKind.class, option)),
                yes(sheet, Slots.VARIABLE_SPEED),
                method(sheet),
                assessment.readings().temperature(Quantity.OUTDOOR_TEMPERATURE),
                yes(sheet, Slots.RESTRICTOR_ALLOWED));
    }

    private static Optional<Boolean> yes(Sheet sheet, Slot slot) {
        return sheet.option(slot).map(Intake.YES::equals);
    }

    /** Nothing that needs an expansion valve is advised where nobody knows that there is one. */
    private static Optional<ChargeMethod> method(Sheet sheet) {
        return sheet.option(Slots.METERING_DEVICE)
                .map(option -> TypedAnswers.meteringDevice(sheet)
                        .map(MeteringDevice::chargeMethod)
                        .orElse(ChargeMethod.TOTAL_SUPERHEAT));
    }
}
