package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.grammar.Completion;

/** A speaker in a quiet room: words as bursts of noise, each seen a tenth of a second after it was said. */
class EndpointerTest {
    private static final long SEED = 12;
    private static final double CHUNK_SECONDS = 0.02;
    private static final double SEEN_LATE = 0.1;

    private static final Map<String, Completion.Extent> EXTENTS = Map.of(
            "eight", Completion.Extent.BEGUN,
            "eight one", Completion.Extent.MAY_GET_DECIMALS,
            "sixty", Completion.Extent.MAY_GO_ON,
            "eight one point", Completion.Extent.BEGUN,
            "eight one point five", Completion.Extent.WHOLE,
            "yes", Completion.Extent.WHOLE);

    /** Seconds of silence behind the last word after which the utterance was over; NaN if it was over before. */
    private static double ended(double pause, String... said) {
        double wordSeconds = 0.3;
        double begins = 1;
        double lastEnds = begins + said.length * wordSeconds + (said.length - 1) * pause;
        Random random = new Random(SEED);
        Endpointer endpointer = new Endpointer(words -> EXTENTS.getOrDefault(words, Completion.Extent.WHOLE));
        short[] chunk = new short[(int) (CHUNK_SECONDS * Ear.RATE)];
        for (int i = 1; i * CHUNK_SECONDS < lastEnds + 3; i++) {
            double time = i * CHUNK_SECONDS;
            double since = time - begins;
            int word = (int) Math.floor(since / (wordSeconds + pause));
            boolean loud = since >= 0 && word < said.length && since - word * (wordSeconds + pause) < wordSeconds;
            for (int k = 0; k < chunk.length; k++) {
                chunk[k] = (short) (random.nextGaussian() * (loud ? 3000 : 3));
            }
            int seen = 0;
            while (seen < said.length && begins + seen * (wordSeconds + pause) + wordSeconds + SEEN_LATE < time) {
                seen++;
            }
            endpointer.hear(time, chunk, false, String.join(" ", List.of(said).subList(0, seen)));
            if (endpointer.over()) {
                return time < lastEnds ? Double.NaN : time - lastEnds;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    @ParameterizedTest(name = "{0}: {1} s")
    @CsvSource({"yes, 0.26", "sixty, 0.5", "eight, 1.5"})
    void theSilenceThatEndsAnUtteranceDependsOnWhatWasSaid(String said, double seconds) {
        assertThat(ended(0, said)).as("seed %d", SEED).isCloseTo(seconds, within(0.06));
    }

    @ParameterizedTest(name = "pauses of {0} s, then {1} s")
    @CsvSource({"0.05, 0.3", "0.2, 0.35", "0.4, 0.6", "0.5, 0.725", "0.7, 0.9"})
    void whoeverPausesBetweenHisWordsIsGivenTimeForDecimals(double pause, double seconds) {
        assertThat(ended(pause, "eight", "one")).as("seed %d", SEED).isCloseTo(seconds, within(0.08));
    }

    @ParameterizedTest
    @CsvSource({"0.3", "0.4", "0.5"})
    void aValueWithSuchPausesIsOneUtterance(double pause) {
        assertThat(ended(pause, "eight", "one", "point", "five"))
                .as("seed %d", SEED)
                .isCloseTo(0.26, within(0.06));
    }
}
