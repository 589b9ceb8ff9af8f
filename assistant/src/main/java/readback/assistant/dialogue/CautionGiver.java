package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import readback.calc.caution.Activity;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.CautionRule;
import readback.calc.name.ConstantName;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Gives cautions: measured ones as soon as their rule fires, those of an activity before it begins. */
final class CautionGiver {

    private CautionGiver() {}

    /** Cautions that the readings call for and that were not given yet. */
    static void warn(Draft draft) {
        List<Caution> cautions = draft.assessment().cautions();
        Set<CautionRule> active = cautions.stream().map(Caution::rule).collect(Collectors.toSet());
        GivenCautions warnings = draft.state().warnings().whileActive(active);
        List<Message> messages = new ArrayList<>();
        for (Caution caution : cautions) {
            if (!warnings.given().contains(caution.rule())) {
                messages.add(caution(caution));
                warnings = warnings.giving(caution.rule(), caution.needsAcknowledgement());
                draft.warnedOf(caution.rule());
            }
        }
        draft.become(draft.state().with(warnings));
        draft.say(messages);
    }

    private static Message caution(Caution caution) {
        return Message.of("caution.say")
                .with("signal", new Fact.Term("signal." + ConstantName.of(caution.signal())))
                .with("text", new Fact.Text(Message.of("caution." + ConstantName.of(caution.rule()))));
    }

    /** Cautions of an activity, each once a session. */
    static void prepare(Draft draft, Activity activity) {
        Assessment assessment = draft.assessment();
        for (Caution caution :
                CautionFinder.in(readback.calc.caution.Situation.before(activity, assessment.refrigerant()))) {
            if (!draft.state().warnings().told().contains(caution.rule())) {
                draft.say(caution(caution));
                draft.warnedOf(caution.rule());
                draft.become(draft.state().with(draft.state().warnings().telling(caution.rule())));
            }
        }
    }
}
