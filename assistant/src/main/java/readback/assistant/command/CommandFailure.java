package readback.assistant.command;

import java.util.regex.Pattern;

/** A command cannot go on. The message is one sentence: what was wrong, what was expected, what to do. */
public final class CommandFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Longer words than this are cut; a path may be longer. */
    private static final Pattern ENDLESS = Pattern.compile("([^\\s/\\\\]{60})[^\\s/\\\\]+");

    CommandFailure(String sentence) {
        super(readable(sentence));
    }

    /** The sentence with its endless words cut: what was typed is shown, but never fills the screen. */
    public static String readable(String sentence) {
        return ENDLESS.matcher(sentence).replaceAll("$1…");
    }

    CommandFailure(Throwable cause) {
        super(cause.getMessage(), cause);
    }
}
