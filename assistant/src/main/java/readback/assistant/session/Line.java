package readback.assistant.session;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.dialogue.Effect;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Message;
import readback.prompts.text.Wording;

/**
 * One thing said, in its two forms.
 *
 * @param spoken for the voice; empty when the ear is spared it
 * @param shown for the screen and the record
 */
public record Line(Message message, String spoken, String shown) {

    /** Everything that a turn says, in order. */
    public static List<Line> of(Turn turn, Wording wording) {
        return messages(turn).stream()
                .map(message -> of(message, turn.state(), wording))
                .toList();
    }

    /** What a message says in a state. */
    static Line of(Message message, State state, Wording wording) {
        UnitSetting units = state.settings().units();
        String spoken = wording.silent(message, state.brief()) ? "" : wording.spoken(message, state.brief(), units);
        return new Line(message, spoken, wording.shown(message, units));
    }

    /** What a turn shows, in order. */
    public static List<String> shown(Turn turn, Wording wording) {
        UnitSetting units = turn.state().settings().units();
        List<String> lines = new ArrayList<>();
        for (Message message : messages(turn)) {
            lines.add(wording.shown(message, units));
        }
        return lines;
    }

    private static List<Message> messages(Turn turn) {
        List<Message> messages = new ArrayList<>();
        for (Effect effect : turn.effects()) {
            if (effect instanceof Effect.Say say) {
                messages.addAll(say.messages());
            }
        }
        return messages;
    }
}
