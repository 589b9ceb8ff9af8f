package readback.assistant.voice;

import java.util.Locale;

/**
 * A phrase that began to sound, and about where in it each word is: as far on in time as in letters.
 *
 * @param beganAt on the clock of {@link System#nanoTime}
 */
record SayingNow(String text, long beganAt, double seconds) {

    static final SayingNow NOTHING = new SayingNow("", 0, 0);

    /** A word is heard up to half a second before or after the place where its letters put it. */
    private static final double TOLERANCE = 0.5;

    /** What a recogniser and the buffers of sound take, before a word is noticed. */
    private static final double NOTICED_AFTER = 0.4;

    /** Whether the words are among those that sound at about this time. */
    boolean says(String words, long at) {
        String plain =
                " " + text.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ").strip() + " ";
        double secondsOfLetter = seconds / plain.length();
        double now = (at - beganAt) / 1e9;
        String wanted = " " + words + " ";
        for (int from = plain.indexOf(wanted); from >= 0; from = plain.indexOf(wanted, from + 1)) {
            double begins = from * secondsOfLetter;
            double ends = (from + wanted.length()) * secondsOfLetter;
            if (now > begins - TOLERANCE && now < ends + TOLERANCE + NOTICED_AFTER) {
                return true;
            }
        }
        return false;
    }
}
