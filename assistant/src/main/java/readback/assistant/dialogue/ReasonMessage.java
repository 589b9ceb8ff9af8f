package readback.assistant.dialogue;

import java.util.List;
import readback.calc.name.ConstantName;
import readback.grammar.Reason;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Why words could not be taken, as a message. */
public final class ReasonMessage {

    private static final List<String> WORDS = List.of("words", "more");
    private static final List<String> READINGS = List.of("value", "low", "high");

    private ReasonMessage() {}

    /** The message of a reason, with its facts in the places that the catalogue has for its kind. */
    public static Message of(Reason reason) {
        Message message = Message.of("not-understood." + ConstantName.of(reason.kind()));
        for (int i = 0; i < reason.words().size(); i++) {
            message = message.with(WORDS.get(i), new Fact.Quoted(reason.words().get(i)));
        }
        for (int i = 0; i < reason.readings().size(); i++) {
            message =
                    message.with(READINGS.get(i), Fact.amount(reason.readings().get(i)));
        }
        return reason.about().isPresent()
                ? message.with(
                        "about", new Fact.Term("full." + reason.about().get().name()))
                : message;
    }
}
