package readback.assistant.dialogue;

import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Message;

/** How steps are asked: in full the first time, shorter when asked again. */
final class Prompts {

    private Prompts() {}

    static Message ask(Step step, Conversation conversation) {
        boolean again = conversation.asked().filter(step.id()::equals).isPresent();
        return Message.of("step." + step.id() + (again ? ".again" : ".ask"));
    }

    /** The value that was said does not count. */
    static Message repeat(Step step) {
        return Message.of("step." + step.id() + ".repeat");
    }

    static Message why(Step step) {
        return Message.of("step." + step.id() + ".why");
    }

    static Message how(Step step) {
        return Message.of("step." + step.id() + ".how");
    }

    /** What may be said to the step: teaches rather than lists. */
    static Message help(Step step) {
        Task task = step.task();
        if (task instanceof Task.Measure) {
            return Message.of("help.measure");
        }
        if (task instanceof Task.Choose choose) {
            return Message.of("help.choose." + choose.choice());
        }
        if (task instanceof Task.Question) {
            return Message.of("help.question");
        }
        if (task instanceof Task.SignOff) {
            return Message.of("help.sign-off");
        }
        return Message.of(task instanceof Task.Await ? "help.await" : "help.acknowledge");
    }
}
