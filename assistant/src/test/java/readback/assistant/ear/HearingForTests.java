package readback.assistant.ear;

import readback.assistant.sound.Samples;

/** What the real ear makes of a sound, for the tests of other packages. */
public final class HearingForTests {
    private HearingForTests() {}

    public static String words(Samples sound) throws EarUnavailableException {
        try (Ear ear = BundledEar.open()) {
            return new AudioFileFeed(ear, sound)
                    .next(StepPhrasesForTests.ALL)
                    .map(Utterance::words)
                    .orElse("");
        }
    }
}
