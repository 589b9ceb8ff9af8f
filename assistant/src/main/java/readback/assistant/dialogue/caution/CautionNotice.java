package readback.assistant.dialogue.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import readback.calc.caution.Activity;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Signal;
import readback.calc.caution.Situation;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * Cautions that are given now: measured ones as soon as their rule fires, those of an activity before it begins.
 *
 * @param messages one for each caution, in the order of giving
 * @param rules of the cautions, in the same order
 * @param given what counts as given afterwards
 */
public record CautionNotice(List<Message> messages, List<CautionRule> rules, GivenCautions given) {

    public CautionNotice {
        messages = List.copyOf(messages);
        rules = List.copyOf(rules);
    }

    /** Those of the cautions that the readings call for now which were not given yet. */
    public static CautionNotice measured(List<Caution> cautions, GivenCautions before) {
        Set<CautionRule> active = cautions.stream().map(Caution::rule).collect(Collectors.toSet());
        GivenCautions given = before.whileActive(active);
        List<Caution> due = new ArrayList<>();
        for (Caution caution : cautions) {
            if (!given.given().contains(caution.rule())) {
                due.add(caution);
                given = given.giving(caution.rule(), caution.needsAcknowledgement());
            }
        }
        return of(due.stream().map(CautionNotice::message).toList(), due, given);
    }

    /** Those of an activity, each once a session; what hurts nobody, a {@link Signal#NOTICE}, is for the eye. */
    public static CautionNotice ofActivity(Activity activity, Optional<Refrigerant> refrigerant, GivenCautions before) {
        GivenCautions given = before;
        List<Caution> due = new ArrayList<>();
        for (Caution caution : CautionFinder.in(Situation.before(activity, refrigerant))) {
            if (!given.told().contains(caution.rule())) {
                due.add(caution);
                given = given.telling(caution.rule());
            }
        }
        List<Message> messages = due.stream()
                .map(caution -> caution.signal() == Signal.NOTICE ? message(caution).quietly() : message(caution))
                .toList();
        return of(messages, due, given);
    }

    private static CautionNotice of(List<Message> messages, List<Caution> due, GivenCautions given) {
        return new CautionNotice(
                messages,
                due.stream().map(Caution::rule).toList(),
                given);
    }

    private static Message message(Caution caution) {
        return Message.of("caution.say")
                .with("signal", new Fact.Term("signal." + ConstantName.of(caution.signal())))
                .with("text", new Fact.Text(Message.of("caution." + ConstantName.of(caution.rule()))));
    }
}
