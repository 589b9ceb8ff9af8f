package readback.assistant.command;

import java.util.List;
import readback.assistant.dialogue.ChecklistValidator;
import readback.assistant.dialogue.Dialogue;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;
import readback.prompts.text.Wording;

/** What every session is made of, read once. */
record Desk(Grammar grammar, Checklists checklists, Language language, Dialogue dialogue) {

    static Desk standard() {
        Grammar grammar = Grammar.standard();
        Checklists checklists = Checklists.standard();
        Language language = Language.english();
        List<String> faults = ChecklistValidator.of(checklists, grammar.choices(), language.wording()::has);
        if (!faults.isEmpty()) {
            throw new CommandFailure("This build of Readback is not sound: " + String.join("; ", faults)
                    + ". Build it again from a clean checkout, or install it anew.");
        }
        return new Desk(grammar, checklists, language, new Dialogue(grammar, checklists));
    }

    /** The texts of the dialogue. */
    Wording wording() {
        return language.wording();
    }
}
