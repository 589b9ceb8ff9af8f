package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.Fault;
import readback.calc.diagnosis.Suspect;
import readback.calc.name.ConstantName;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** A diagnosis as messages: what is suspected, and what speaks for it. */
public final class DiagnosisMessages {

    private DiagnosisMessages() {}

    /** What is suspected when the charge is not to be touched, or beside what the verdict says. */
    public static List<Message> suspects(Judgement judgement, Diagnosis diagnosis, Optional<Suspect> reservation) {
        if (reservation.isPresent()) {
            Fact fault = fault(reservation.get());
            return switch (judgement.verdict().kind()) {
                case IN_TOLERANCE -> List.of(Message.of("diagnosis.right-but").with("fault", fault));
                case NO_VALID_TEST ->
                    List.of(Message.of("diagnosis.cold-coil").with("fault", fault), Message.of("diagnosis.recharge"));
                default -> List.of(Message.of("diagnosis.not-ruled-out").with("fault", fault));
            };
        }
        if (judgement.verdict().kind() != Verdict.Kind.DO_NOT_CHARGE
                || diagnosis.certainty() == Diagnosis.Certainty.TOO_LITTLE_EVIDENCE) {
            return List.of();
        }
        // Something comes first, so "no fault" is no suspicion.
        List<Suspect> faults = diagnosis.suspects().stream()
                .filter(suspect -> suspect.fault() != Fault.NONE)
                .toList();
        List<Message> messages = new ArrayList<>();
        boolean clear = diagnosis.certainty() == Diagnosis.Certainty.CLEAR
                && diagnosis.leader().fault() != Fault.NONE;
        if (clear || faults.size() == 1) {
            messages.add(Message.of("diagnosis.clear").with("fault", fault(faults.get(0))));
        } else if (!faults.isEmpty()) {
            messages.add(Message.of("diagnosis.ambiguous")
                    .with("fault", fault(faults.get(0)))
                    .with("other", fault(faults.get(1))));
        }
        return messages;
    }

    /** What speaks for the leading suspicion. */
    static Optional<Message> clues(Diagnosis diagnosis) {
        List<Fact> clues = diagnosis.leader().supporting().stream()
                .flatMap(clue -> clue.measured().stream())
                .<Fact>map(evidence -> new Fact.Term(
                        "symptom." + ConstantName.of(evidence.symptom()) + (evidence.above() ? ".above" : ".below")))
                .toList();
        return clues.isEmpty() || diagnosis.leader().fault() == Fault.NONE
                ? Optional.empty()
                : Optional.of(Message.of("why.clues")
                        .with("fault", fault(diagnosis.leader()))
                        .with("clues", new Fact.Listing(clues)));
    }

    private static Fact fault(Suspect suspect) {
        return new Fact.Term("fault." + ConstantName.of(suspect.fault()));
    }
}
