package readback.assistant.practice;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.assistant.dialogue.Assessment;
import readback.assistant.simulated.Truth;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Verdict;
import readback.calc.diagnosis.Fault;
import readback.calc.diagnosis.Suspect;
import readback.calc.name.ConstantName;
import readback.calc.plant.PlantFault;
import readback.calc.quantity.Unit;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * What came of a practice call.
 *
 * @param concluded what the last verdict on the charge was told from; empty where none was told
 * @param exam what came of the technician's own verdict; empty where he was guided
 * @param moves how often refrigerant was moved
 * @param wrongOunces of it away from the nameplate charge, or moved at all where the charge was not at fault
 * @param charge at the end, as a share of the nameplate's
 * @param recharged whether the unit was emptied and charged by weight
 * @param repaired what was put right by other work
 * @param threatened how long the compressor or the coil was truly threatened, by what
 * @param told the cautions that were given
 * @param unheeded those that nobody acknowledged
 * @param runs whether the unit still ran
 * @param lasted the simulated time
 */
public record Debrief(
        Scenario scenario,
        Optional<Assessment> concluded,
        Optional<Exam> exam,
        int moves,
        double wrongOunces,
        double charge,
        boolean recharged,
        Set<PlantFault> repaired,
        Map<CautionRule, Duration> threatened,
        Set<CautionRule> told,
        Set<CautionRule> unheeded,
        boolean runs,
        Duration lasted) {

    /** A charge this near to the nameplate's is right. Ours. */
    private static final double RIGHT = 0.03;

    /** Liquid for longer than this may cost a compressor. Ours. */
    private static final Duration HARMFUL = Duration.ofMinutes(10);

    public Debrief {
        repaired = Set.copyOf(repaired);
        threatened = Map.copyOf(threatened);
        told = Set.copyOf(told);
        unheeded = Set.copyOf(unheeded);
    }

    /**
     * The technician's own verdict.
     *
     * @param said empty where he said none
     * @param shown what his readings pointed to when he said it
     */
    public record Exam(Optional<Fault> said, Fault shown) {

        /** How it stands to the truth and to what the readings could show. */
        Message told(Fault truth) {
            return said.map(own -> Message.of("practice.own." + standing(own, truth))
                            .with("said", new Fact.Term("likely-fault." + ConstantName.of(own)))
                            .with("shown", new Fact.Term("fault." + ConstantName.of(shown))))
                    .orElseGet(() -> Message.of("practice.own.nothing"));
        }

        private String standing(Fault own, Fault truth) {
            if (own == truth) {
                return "right";
            }
            return shown == truth ? "missed" : own == shown ? "as-shown" : "against";
        }
    }

    /** How well it went. */
    public enum Grade {
        /** The fault was found and put right, or a sound unit left alone. */
        SOLVED,
        /** The fault was found; what mends it cannot be done here. */
        FOUND,
        /** The charge was moved the right way and is not right yet. */
        ON_THE_WAY,
        /** Refrigerant was moved for a fault that is not the charge, or away from the right charge. */
        MOVED_IN_VAIN,
        /** Nothing was found and nothing was hurt. */
        OPEN
    }

    /** How well it went; harm counts before success. */
    public Grade grade() {
        Truth truth = scenario.drawn().truth();
        boolean right = Math.abs(charge - 1) <= RIGHT;
        if (truth.isCharge()) {
            boolean away = Math.abs(charge - 1) > truth.size();
            return away
                    ? Grade.MOVED_IN_VAIN
                    : right ? Grade.SOLVED : moves > 0 ? Grade.ON_THE_WAY : saysSo() ? Grade.FOUND : Grade.OPEN;
        }
        if (wrongOunces > 0) {
            return Grade.MOVED_IN_VAIN;
        }
        if (truth.sound()) {
            return saysSo() ? Grade.SOLVED : Grade.OPEN;
        }
        return truth.fault().filter(repaired::contains).isPresent()
                ? Grade.SOLVED
                : saysSo() ? Grade.FOUND : Grade.OPEN;
    }

    /** Whether what is wrong was named: in an exam by the technician, else by the verdict or the first suspect. */
    private boolean saysSo() {
        Fault truth = scenario.drawn().truth().suspect();
        return exam.isPresent()
                ? exam.get().said().equals(Optional.of(truth))
                : concluded.isPresent() && truth == suspect();
    }

    private Fault suspect() {
        return concluded.map(Debrief::suspect).orElse(Fault.NONE);
    }

    /** What the verdict, or else the first suspect, names. */
    static Fault suspect(Assessment assessment) {
        Verdict.Kind verdict = assessment.verdict().orElse(Verdict.Kind.INCOMPLETE);
        if (verdict == Verdict.Kind.ADD) {
            return Fault.UNDERCHARGE;
        }
        if (verdict == Verdict.Kind.RECOVER) {
            return Fault.OVERCHARGE;
        }
        if (verdict == Verdict.Kind.IN_TOLERANCE && assessment.reservation().isEmpty()) {
            return Fault.NONE;
        }
        return assessment
                .reservation()
                .map(Suspect::fault)
                .or(() -> assessment.diagnosis().map(found -> found.leader().fault()))
                .orElse(Fault.NONE);
    }

    /** How long liquid reached the compressor. */
    public Duration liquid() {
        return threatened.getOrDefault(CautionRule.LIQUID_AT_COMPRESSOR, Duration.ZERO);
    }

    /** What is said and shown, the result first. */
    public List<Message> messages() {
        List<Message> says = new ArrayList<>();
        Truth truth = scenario.drawn().truth();
        says.add(Message.of("practice.grade." + ConstantName.of(grade())));
        says.add(
                truth.sound()
                        ? Message.of("practice.truth.sound")
                        : Message.of("practice.truth.fault")
                                .with(
                                        "fault",
                                        new Fact.Term("plant."
                                                + ConstantName.of(truth.fault().orElseThrow())))
                                .with("percent", count(100 * truth.size())));
        exam.ifPresent(own -> says.add(own.told(truth.suspect())));
        says.add(
                concluded.isEmpty()
                        ? Message.of("practice.concluded.nothing")
                        : Message.of("practice.concluded")
                                .with(
                                        "verdict",
                                        new Fact.Term("verdict."
                                                + ConstantName.of(concluded
                                                        .flatMap(Assessment::verdict)
                                                        .orElse(Verdict.Kind.INCOMPLETE))))
                                .with("suspect", new Fact.Term("fault." + ConstantName.of(suspect()))));
        says.add(
                moves == 0 && !recharged
                        ? Message.of("practice.moved.nothing")
                        : Message.of(recharged ? "practice.recharged" : "practice.moved")
                                .with("moves", count(moves))
                                .with("wrong", ounces(wrongOunces))
                                .with("percent", count(100 * charge)));
        repaired.stream()
                .sorted()
                .forEach(fault -> says.add(Message.of("practice.repaired")
                        .with("fault", new Fact.Term("plant." + ConstantName.of(fault)))));
        says.add(Message.of(told.isEmpty() ? "practice.cautions.none" : "practice.cautions")
                .with("told", count(told.size()))
                .with("unheeded", count(unheeded.size())));
        if (!runs) {
            says.add(Message.of("practice.stopped"));
        }
        if (!liquid().isZero()) {
            says.add(Message.of(
                            liquid().compareTo(HARMFUL) > 0 ? "practice.compressor.hurt" : "practice.compressor.liquid")
                    .with("minutes", count(Math.ceil(liquid().toSeconds() / 60.0))));
        } else {
            says.add(Message.of("practice.compressor.safe"));
        }
        says.add(Message.of("practice.lasted").with("minutes", count(Math.ceil(lasted.toSeconds() / 60.0))));
        if (scenario.listed()) {
            says.add(Message.of("practice.goal." + scenario.name()));
        }
        return says;
    }

    private static Fact count(double number) {
        return new Fact.Count((int) Math.round(number));
    }

    private static Fact ounces(double ounces) {
        return new Fact.Amount(BigDecimal.valueOf(Math.round(ounces * 2) / 2.0).stripTrailingZeros(), Unit.OUNCE);
    }
}
