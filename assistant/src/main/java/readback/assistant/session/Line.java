package readback.assistant.session;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.dialogue.Effect;
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
        boolean brief = turn.state().brief();
        UnitSetting units = turn.state().settings().units();
        List<Line> lines = new ArrayList<>();
        for (Effect effect : turn.effects()) {
            if (effect instanceof Effect.Say say) {
                for (Message message : say.messages()) {
                    String spoken = wording.silent(message, brief) ? "" : wording.spoken(message, brief, units);
                    lines.add(new Line(message, spoken, wording.shown(message, units)));
                }
            }
        }
        return lines;
    }
}
