package readback.assistant.dialogue.outcome;

import readback.calc.charge.Correction;
import readback.calc.name.ConstantName;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** A correction as messages: how much to move next, and what it rests on. */
public final class CorrectionMessages {

    private CorrectionMessages() {}

    /**
     * Tells how much to move.
     *
     * @param certain false where the instruments cannot decide whether to move anything
     */
    public static void tell(Correction correction, boolean certain, UnitSetting units, Telling telling) {
        String basis = ConstantName.of(correction.basis());
        if (correction.basis() == Correction.Basis.NOTHING_TO_CORRECT) {
            return;
        }
        if (correction.basis() == Correction.Basis.CONTRARY_RESPONSE) {
            telling.reason(Message.of("correction." + basis));
            return;
        }
        if (correction.basis() == Correction.Basis.BY_WEIGHT) {
            telling.headline(Message.of("correction." + basis));
            return;
        }
        String way = correction.next().kilograms() < 0 ? "recover" : "add";
        boolean stands = certain || correction.basis() == Correction.Basis.TRIM;
        telling.headline(Message.of("correction." + (stands ? basis : "if-so-again"))
                .with("way", new Fact.Term("way." + way))
                .with("next", RoundedFacts.step(correction.next(), units)));
        if (correction.total().isPresent()
                && correction.least().isPresent()
                && correction.most().isPresent()) {
            telling.number(Message.of("correction.total")
                    .with("total", RoundedFacts.size(correction.total().get(), units))
                    .with("least", RoundedFacts.size(correction.least().get(), units))
                    .with("most", RoundedFacts.size(correction.most().get(), units)));
        }
        if (correction.basis() == Correction.Basis.TRIM) {
            telling.reason(Message.of("correction.trim.why"));
        }
        if (correction.bound() == Correction.Bound.SMALLEST_SYSTEM) {
            telling.reason(Message.of("correction.plate-unknown"));
        }
    }
}
