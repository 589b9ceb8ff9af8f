package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.calc.caution.CautionRule;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Message;

/** What is told about the step in hand: why it is asked, how it is done, what may be said to it. */
final class Explanations {

    /** What is told in an exam in place of what is to be known. */
    static final Message WITHHELD = Message.of("exam.withheld");

    private final Flow flow;

    Explanations(Flow flow) {
        this.flow = flow;
    }

    void why(Draft draft, Optional<Quantity> named, Optional<Step> asked) {
        Optional<Quantity> about = named.or(() -> draft.conversation().pending().flatMap(Pending::inDoubt));
        List<CautionRule> unheeded =
                draft.state().warnings().unheeded().stream().sorted().toList();

        if (about.isEmpty() && !unheeded.isEmpty()) {
            unheeded.forEach(caution -> draft.say(Message.of("caution." + ConstantName.of(caution) + ".why")));
        } else if (about.isEmpty() && draft.state().told(Judged.CHARGE) && meansTheVerdict(draft, asked)) {
            draft.say(Answers.reasons(draft.state()));
        } else {
            draft.say(taught(draft, step(draft, about, asked), Prompts::why));
            asked.filter(step -> about.isEmpty())
                    .flatMap(step -> step.task().prepared())
                    .ifPresent(activity -> {
                        draft.say(CautionNotice.readOut(
                                activity,
                                draft.assessment().refrigerant(),
                                draft.state().settings().understood()));
                        whyItBurns(draft);
                    });
        }
    }

    void how(Draft draft, Optional<Quantity> about, Optional<Step> asked) {
        draft.say(taught(draft, step(draft, about, asked), Prompts::how));
    }

    /** What is told about a step; of what is to be measured or seen nothing in an exam. */
    static Message taught(Draft draft, Optional<Step> about, Function<Step, Message> told) {
        return about.filter(step -> draft.state().examined() && asksForSkill(step))
                        .isPresent()
                ? WITHHELD
                : about.map(told).orElseGet(() -> Message.of("help.general"));
    }

    /**
     * Whether it asks for a value or a choice; what is confirmed before work and what is waited for keeps from harm.
     */
    private static boolean asksForSkill(Step step) {
        return switch (step.task().reply()) {
            case VALUE, OPTION -> true;
            case YES_OR_NO, DONE, FINISH, TIME, NOTHING -> false;
        };
    }

    /** Before work that can set a refrigerant on fire, "why" tells how that is kept from happening. */
    private static void whyItBurns(Draft draft) {
        Stream.of(CautionRule.FLAMMABLE_A3, CautionRule.FLAMMABLE_A2L)
                .filter(draft.state().warnings().told()::contains)
                .forEach(caution -> draft.say(Message.of("caution." + ConstantName.of(caution) + ".why")));
    }

    /** Just after the verdict, and when nothing but the end is left; else "why" means what is asked. */
    private static boolean meansTheVerdict(Draft draft, Optional<Step> asked) {
        boolean justSaid = draft.assessment()
                .announcement(Judged.CHARGE)
                .filter(told -> draft.conversation().said().stream().anyMatch(told::tells))
                .isPresent();
        return justSaid
                || asked.filter(step -> step.task().reply() != Task.Reply.FINISH)
                        .isEmpty();
    }

    private Optional<Step> step(Draft draft, Optional<Quantity> about, Optional<Step> asked) {
        return about.isEmpty() ? asked : flow.step(draft.state(), Slot.of(about.get()));
    }

    /** What may be said to the step in hand; asked for once more, what can always be said. */
    static void help(Draft draft, Optional<Step> asked) {
        Message general = Message.of("help.general");
        boolean again = draft.conversation().said().contains(general.quietly());
        if (asked.isEmpty() || again) {
            draft.say(general);
            return;
        }
        boolean doubt = draft.conversation().pending().flatMap(Pending::inDoubt).isPresent();
        boolean warned = draft.conversation().pending().isEmpty()
                && !draft.state().warnings().unheeded().isEmpty();
        draft.say(doubt ? Message.of("help.doubt") : warned ? Message.of("help.caution") : Prompts.help(asked.get()));
        draft.say(doubt ? Message.of("help.more").quietly() : Message.of("help.more"));
        draft.say(general.quietly());
    }
}
