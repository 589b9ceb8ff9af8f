package readback.assistant.ear;

import readback.assistant.sound.Samples;

/** What the real ear makes of a sound, for the tests of other packages. */
public final class HearingForTests {
    private HearingForTests() {}

    /** The real ear; close it. */
    public static Ear ear() throws EarUnavailableException {
        return BundledEar.open();
    }

    /** A call that ships with the program, as it sounds. */
    public static Samples call(String name) {
        return SpokenLines.sound(name);
    }

    public static String words(Samples sound) throws EarUnavailableException {
        try (Ear ear = BundledEar.open()) {
            return new AudioFileFeed(ear, sound)
                    .next(StepPhrasesForTests.ALL)
                    .map(Utterance::words)
                    .orElse("");
        }
    }
}
