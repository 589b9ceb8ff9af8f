package readback.assistant.dialogue;

import readback.prompts.checklist.Step;
import readback.prompts.text.Message;

/** How steps are asked: in full the first time, shorter when asked again. */
final class Prompts {

    private Prompts() {}

    static Message ask(Step step, Conversation conversation) {
        boolean again = conversation.asked().filter(step.id()::equals).isPresent();
        return step.text(again ? ".again" : ".ask");
    }

    /** The value that was said does not count. */
    static Message repeat(Step step) {
        return step.text(".repeat");
    }

    static Message why(Step step) {
        return step.text(".why");
    }

    static Message how(Step step) {
        return step.text(".how");
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
