package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import readback.assistant.sound.Samples;
import readback.grammar.Hypothesis;

/** What every ear promises. The sound is the beginning of a recorded call: three utterances, in the noise of a fan. */
abstract class EarContract {
    private static final List<String> SAID = SpokenLines.of("piston").subList(0, 3);
    private static final int CHUNK = 800;

    private Ear ear;

    abstract Ear open() throws EarUnavailableException;

    @BeforeEach
    void openEar() throws EarUnavailableException {
        ear = open();
    }

    @AfterEach
    void closeEar() {
        ear.close();
    }

    private static Samples threeUtterances() {
        Samples call = SpokenLines.sound("piston");
        return Samples.of(call.slice(0, (int) (9.5 * Ear.RATE)), Ear.RATE);
    }

    private static Optional<Utterance> feed(Listening listening, Samples sound) {
        Optional<Utterance> last = Optional.empty();
        for (int at = 0; at < sound.length() && last.isEmpty(); at += CHUNK) {
            last = listening.hear(sound.slice(at, at + CHUNK));
        }
        return last;
    }

    @Test
    void silenceIsNoUtterance() {
        try (Listening listening = ear.listen(SAID)) {
            assertThat(feed(listening, Samples.silence(6, Ear.RATE))).isEmpty();
            assertThat(listening.partial()).isEmpty();
            assertThat(listening.finish()).isEmpty();
            assertThat(listening.seconds()).isEqualTo(6);
        }
    }

    @Test
    void utterancesOfOneRecordingComeOneByOneInTheirOrder() {
        AudioFileFeed feed = new AudioFileFeed(ear, threeUtterances());

        for (String said : SAID) {
            assertThat(feed.next(SAID).orElseThrow().words()).isEqualTo(said);
        }
        assertThat(feed.next(SAID)).isEmpty();
        assertThat(feed.ended()).isTrue();
    }

    @Test
    void anUtteranceLiesWhereItWasSaid() {
        AudioFileFeed feed = new AudioFileFeed(ear, threeUtterances());

        Utterance first = feed.next(SAID).orElseThrow();
        double firstFed = feed.seconds();
        Utterance second = feed.next(SAID).orElseThrow();

        assertThat(first.startSeconds()).isBetween(0.5, 1.0);
        assertThat(first.endSeconds()).isGreaterThan(first.startSeconds()).isLessThanOrEqualTo(firstFed);
        assertThat(second.startSeconds()).isBetween(3.3, 4.4);
        assertThat(second.endSeconds()).isLessThanOrEqualTo(feed.seconds() + 0.3);
    }

    @Test
    void confidencesAreSharesOfOneAndAlternativesDiffer() {
        Utterance heard = new AudioFileFeed(ear, threeUtterances()).next(SAID).orElseThrow();

        assertThat(heard.alternatives())
                .allSatisfy(h -> assertThat(h.confidence()).isBetween(0.0, 1.0));
        assertThat(heard.alternatives().stream()
                        .mapToDouble(Hypothesis::confidence)
                        .sum())
                .isLessThanOrEqualTo(1 + 1e-9);
        assertThat(heard.alternatives().stream().map(Hypothesis::words).toList())
                .doesNotHaveDuplicates()
                .doesNotContain("");
        assertThat(new HashSet<>(List.of(heard.words().split(" "))))
                .isEqualTo(new HashSet<>(List.of(SAID.get(0).split(" "))));
    }

    @Test
    void whatWasSaidWhenTheSoundEndsIsNotLost() {
        Samples cut = Samples.of(threeUtterances().slice(0, (int) (1.75 * Ear.RATE)), Ear.RATE);
        try (Listening listening = ear.listen(SAID)) {
            assertThat(feed(listening, cut)).isEmpty();
            assertThat(listening.partial()).isNotEmpty();

            assertThat(listening.finish().orElseThrow().words()).isEqualTo(SAID.get(0));
            assertThat(listening.finish()).isEmpty();
        }
    }

    @Test
    void listeningGoesOnAfterAFinish() {
        Samples call = threeUtterances();
        try (Listening listening = ear.listen(SAID)) {
            feed(listening, Samples.of(call.slice(0, (int) (1.75 * Ear.RATE)), Ear.RATE));
            listening.finish();

            Samples rest = Samples.of(call.slice((int) (1.75 * Ear.RATE), call.length()), Ear.RATE);
            assertThat(feed(listening, rest).orElseThrow().words()).isEqualTo(SAID.get(1));
        }
    }

    @Test
    void whereNothingIsExpectedAllSpeechIsUnknown() {
        Utterance heard =
                new AudioFileFeed(ear, threeUtterances()).next(List.of()).orElseThrow();

        assertThat(heard.onlyUnknown()).isTrue();
    }

    @Test
    void wordsThatCannotBeHeardAreNamedInOrder() {
        assertThat(ear.missing(List.of("piston", "xylophone", "ninety", "aardvark", "xylophone")))
                .containsExactly("aardvark", "xylophone");
    }
}
