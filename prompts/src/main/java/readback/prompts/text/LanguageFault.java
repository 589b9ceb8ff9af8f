package readback.prompts.text;

import java.util.List;

/**
 * A language that is not whole. The program does not start with it: a text would be missing in the middle of a call.
 */
public final class LanguageFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param faults each as the end of a sentence that begins with the language */
    LanguageFault(String tag, List<String> faults) {
        super("The language \"" + tag + "\" " + String.join("; it ", faults) + ".");
    }
}
