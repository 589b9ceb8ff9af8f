package readback.assistant.command;

import java.util.List;
import readback.assistant.dialogue.ChecklistValidator;
import readback.assistant.dialogue.Dialogue;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Wording;

/** What every session is made of, read once. */
record Desk(Grammar grammar, Checklists checklists, Wording wording, Dialogue dialogue) {

    static Desk standard() {
        Grammar grammar = Grammar.standard();
        Checklists checklists = Checklists.standard();
        Wording wording = Wording.english();
        List<String> faults = ChecklistValidator.of(checklists, grammar.choices(), wording::has);
        if (!faults.isEmpty()) {
            throw new CommandFailure("This build of Readback is not sound: " + String.join("; ", faults)
                    + ". Build it again from a clean checkout, or install it anew.");
        }
        return new Desk(grammar, checklists, wording, new Dialogue(grammar, checklists));
    }
}
