package readback.assistant.dialogue.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /**
     * Those of an activity, each once a session. What hurts nobody, a {@link Signal#NOTICE}, is for the eye; what was
     * understood earlier the same day is called by its name.
     */
    public static CautionNotice ofActivity(
            Activity activity,
            Optional<Refrigerant> refrigerant,
            GivenCautions before,
            Set<CautionRule> understoodToday) {
        GivenCautions given = before;
        List<Caution> due = new ArrayList<>();
        for (Caution caution : CautionFinder.in(new Situation.Before(activity, refrigerant))) {
            if (!given.told().contains(caution.rule())) {
                due.add(caution);
                given = given.telling(caution.rule());
            }
        }
        List<Message> messages = new ArrayList<>();
        List<Fact> named = due.stream()
                .filter(caution -> aloud(caution) && understoodToday.contains(caution.rule()))
                .<Fact>map(caution -> new Fact.Term("caution." + ConstantName.of(caution.rule())))
                .toList();
        if (!named.isEmpty()) {
            messages.add(Message.of("caution.same").with("cautions", new Fact.Listing(named)));
        }
        for (Caution caution : due) {
            boolean said = aloud(caution) && !understoodToday.contains(caution.rule());
            messages.add(said ? message(caution) : message(caution).quietly());
        }
        return of(messages, due, given);
    }

    /** Those of an activity that were shown or named only, read out. */
    public static List<Message> readOut(
            Activity activity, Optional<Refrigerant> refrigerant, Set<CautionRule> understoodToday) {
        return CautionFinder.in(new Situation.Before(activity, refrigerant)).stream()
                .filter(caution -> !aloud(caution) || understoodToday.contains(caution.rule()))
                .map(CautionNotice::message)
                .toList();
    }

    /** Everything that was warned of before or holds now, the gravest first. */
    public static List<Message> again(GivenCautions warnings) {
        return Stream.of(warnings.given(), warnings.unheeded(), warnings.told())
                .flatMap(Set::stream)
                .distinct()
                .sorted()
                .map(rule -> message(rule))
                .toList();
    }

    private static boolean aloud(Caution caution) {
        return caution.signal() != Signal.NOTICE;
    }

    private static CautionNotice of(List<Message> messages, List<Caution> due, GivenCautions given) {
        return new CautionNotice(messages, due.stream().map(Caution::rule).toList(), given);
    }

    private static Message message(Caution caution) {
        return message(caution.rule());
    }

    private static Message message(CautionRule rule) {
        return Message.of("caution.say")
                .with("signal", new Fact.Term("signal." + ConstantName.of(rule.signal())))
                .with("text", new Fact.Text(Message.of("caution." + ConstantName.of(rule))));
    }
}
