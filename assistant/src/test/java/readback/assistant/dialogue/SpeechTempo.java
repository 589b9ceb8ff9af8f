package readback.assistant.dialogue;

import java.util.List;
import java.util.regex.Pattern;

/**
 * How long the voice takes for a text, worked out from its letters and pauses, so that it needs no voice and is the
 * same everywhere.
 *
 * <p>Fitted by least squares to flite with its voice {@code rms}, as the program uses it and trims it, over 850 texts
 * of the reviewed conversations, 2026-11-28. Texts kept out of the fit (five parts in turn): root mean square of the
 * error 0.32 s at a mean of 4.4 s, 0.63 s for 95 in 100, 1.6 s at worst; the sum of all of them within 0.5 percent.
 */
final class SpeechTempo {

    /** Root mean square of the error over texts kept out of the fit. */
    static final double TYPICAL_ERROR_SECONDS = 0.32;

    private static final double SECONDS_A_LETTER = 0.072;
    private static final double SECONDS_A_STOP = 0.453;
    private static final double SECONDS_A_COMMA = 0.286;
    private static final double SECONDS_A_TEXT = 0.258;

    /** The breath that the player puts between two texts. */
    private static final double BREATH_SECONDS = 0.2;

    private static final Pattern STOP = Pattern.compile("[.?!](?=\\s)");
    private static final Pattern COMMA = Pattern.compile("[,;:](?=\\s)");

    private SpeechTempo() {}

    /** Seconds for one text; none for an empty one. */
    static double seconds(String text) {
        if (text.isBlank()) {
            return 0;
        }
        long letters = text.chars().filter(Character::isLetter).count();
        return letters * SECONDS_A_LETTER
                + STOP.matcher(text).results().count() * SECONDS_A_STOP
                + COMMA.matcher(text).results().count() * SECONDS_A_COMMA
                + SECONDS_A_TEXT;
    }

    /** Seconds for texts one after the other, with a breath between them. */
    static double seconds(List<String> texts) {
        List<String> spoken = texts.stream().filter(text -> !text.isBlank()).toList();
        return spoken.stream().mapToDouble(SpeechTempo::seconds).sum()
                + Math.max(0, spoken.size() - 1) * BREATH_SECONDS;
    }
}
