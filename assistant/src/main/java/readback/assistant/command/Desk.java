package readback.assistant.command;

import readback.assistant.dialogue.Dialogue;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Wording;

/** What every session is made of, read once. */
record Desk(Grammar grammar, Checklists checklists, Wording wording, Dialogue dialogue) {

    static Desk standard() {
        Grammar grammar = Grammar.standard();
        Checklists checklists = Checklists.standard();
        return new Desk(grammar, checklists, Wording.english(), new Dialogue(grammar, checklists));
    }
}
