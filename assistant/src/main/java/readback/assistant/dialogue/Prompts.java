package readback.assistant.dialogue;

import readback.prompts.checklist.Step;
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
        return switch (step.task().reply()) {
            case VALUE -> Message.of("help.measure");
            case OPTION -> Message.of("help.choose." + step.task().choices().orElseThrow());
            case YES_OR_NO -> Message.of("help.question");
            case FINISH -> Message.of("help.sign-off");
            case TIME -> Message.of("help.await");
            case DONE, NOTHING -> Message.of("help.acknowledge");
        };
    }
}
