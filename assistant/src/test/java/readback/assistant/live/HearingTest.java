package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;
import readback.assistant.ear.ScriptedEar;
import readback.assistant.echo.BargeIn;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.echo.PlayedSound;
import readback.grammar.Vocabulary;

/** The ear as keys open and close it, and as Readback's own voice makes it deaf. */
class HearingTest {
    private final BlockingQueue<LiveInput> out = new LinkedBlockingQueue<>();
    private volatile boolean deaf;
    private final Hearing hearing = new Hearing(
            new ScriptedEar(List.of("one", "two"), List.of()), () -> deaf, Optional.empty(), false, -55, out::add);
    private final Hearing headset = new Hearing(
            new ScriptedEar(List.of("one", "two"), List.of()), () -> deaf, Optional.empty(), true, -55, out::add);

    private final PlayedSound played = new PlayedSound();
    private volatile boolean itsOwn;

    /** Hears orders while Readback speaks; its echo is taken out without a trace. */
    private final Hearing overVoice = overVoice(new ScriptedEar(List.of("stop", "two"), List.of()));

    private Hearing overVoice(ScriptedEar ear) {
        BargeIn orders = new BargeIn(ear, new Subtracting(), List.of("stop", "[unk]"), words -> itsOwn, -55);
        return new Hearing(ear, () -> deaf, Optional.of(new Hearing.OverVoice(orders, played)), false, -55, out::add);
    }

    /** An echo that comes as it was played, at once. */
    private static final class Subtracting implements EchoCanceller {
        @Override
        public short[] cancel(short[] heard, short[] played) {
            short[] left = new short[heard.length];
            for (int i = 0; i < left.length; i++) {
                left[i] = (short) (heard[i] - played[i]);
            }
            return left;
        }

        @Override
        public void close() {
            // nothing is held
        }
    }

    @AfterEach
    void close() {
        overVoice.close();
        hearing.close();
        headset.close();
    }

    private static void sound(Hearing ear, double peak, double seconds) {
        int chunk = Ear.RATE / 50;
        for (int n = 0; n < Math.round(seconds * 50); n++) {
            short[] tone = new short[chunk];
            for (int i = 0; i < chunk; i++) {
                tone[i] = (short) (peak * 32767 * Math.sin(2 * Math.PI * 300 * i / Ear.RATE));
            }
            ear.sound(tone);
        }
    }

    private LiveInput next() throws InterruptedException {
        return out.poll(10, TimeUnit.SECONDS);
    }

    private String utterance() throws InterruptedException {
        LiveInput input = next();
        while (input instanceof LiveInput.Partial) {
            input = next();
        }
        return ((LiveInput.Spoken) input).utterance().words();
    }

    @Test
    void anOpenEarHearsPartsFirstAndThenTheWhole() throws InterruptedException {
        hearing.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        hearing.open(true);

        sound(hearing, 0.001, 0.5);
        sound(hearing, 0.5, 0.5);
        sound(hearing, 0.001, 0.5);

        assertThat(next()).isEqualTo(new LiveInput.Partial("one"));
        LiveInput.Spoken spoken = (LiveInput.Spoken) next();
        assertThat(spoken.utterance().words()).isEqualTo("one");
        // Half a second, and a fifth before and after it.
        assertThat(spoken.sound().seconds()).isBetween(0.85, 0.95);
        // 0.5 against 0.001 of full scale is 54 decibels.
        assertThat(spoken.aboveNoise()).isBetween(50.0, 58.0);
    }

    /** A model that cannot be loaded tells so only when it is listened with. */
    @Test
    void an_ear_that_fails_is_told_and_holds_nobody_up() throws InterruptedException {
        Ear broken = mock(Ear.class);
        when(broken.listen(any(Vocabulary.class))).thenThrow(new IllegalStateException("The model cannot be loaded."));
        try (Hearing failing = new Hearing(broken, () -> deaf, Optional.empty(), false, -55, out::add)) {
            failing.open(true);
            sound(failing, 0.5, 0.5);

            assertThat(next())
                    .isInstanceOfSatisfying(
                            LiveInput.MicrophoneLost.class,
                            lost -> assertThat(lost.why())
                                    .contains("The model cannot be loaded.")
                                    .contains("type, or start Readback again"));
            for (int i = 0; i < 2_000; i++) {
                failing.expect(Vocabulary.ofPhrases(List.of("one")));
            }
            sound(failing, 0.5, 15);
        }
        verify(broken).close();
    }

    @Test
    void aClosedEarHearsNothing() throws InterruptedException {
        hearing.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        sound(hearing, 0.5, 0.5);
        sound(hearing, 0.001, 0.5);
        hearing.open(true);

        sound(hearing, 0.001, 0.1);
        sound(hearing, 0.5, 0.5);
        sound(hearing, 0.001, 0.5);

        assertThat(utterance()).isEqualTo("one");
        assertThat(out.poll(200, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void whatReadbackSaysItselfIsNotHeard() throws InterruptedException {
        hearing.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        hearing.open(true);
        deaf = true;
        sound(hearing, 0.5, 0.5);
        sound(hearing, 0.001, 0.5);

        assertThat(out.poll(500, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void withAHeadsetSpeakingInterrupts() throws InterruptedException {
        headset.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        headset.open(true);
        deaf = true;

        sound(headset, 0.001, 0.5);
        sound(headset, 0.5, 0.1);

        LiveInput first = next();
        assertThat(first instanceof LiveInput.Partial ? next() : first).isInstanceOf(LiveInput.Interrupted.class);
    }

    @Test
    void anOrderOverTheVoiceSilencesItAndIsHeardToItsEnd() throws InterruptedException {
        overVoice.expect(Vocabulary.ofPhrases(List.of("one")));
        overVoice.open(true);
        deaf = true;
        sound(overVoice, 0.001, 0.5);
        sound(overVoice, 0.5, 0.3);

        LiveInput first = next();
        while (first instanceof LiveInput.Partial) {
            first = next();
        }
        assertThat(first).isInstanceOf(LiveInput.Interrupted.class);
        deaf = false;
        sound(overVoice, 0.5, 0.3);
        sound(overVoice, 0.001, 0.5);
        assertThat(utterance()).isEqualTo("stop");
    }

    @Test
    void itsOwnVoiceAtTheMicrophoneIsNoOrder() throws InterruptedException {
        overVoice.expect(Vocabulary.ofPhrases(List.of("one")));
        overVoice.open(true);
        deaf = true;
        short[] voice = new short[Ear.RATE];
        java.util.Arrays.fill(voice, (short) 9000);
        played.begins(voice);
        for (int at = 0; at < voice.length; at += Ear.RATE / 50) {
            overVoice.sound(java.util.Arrays.copyOfRange(voice, at, at + Ear.RATE / 50));
        }

        assertThat(out.poll(500, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void aWordThatReadbackIsSayingItselfIsNoOrder() throws InterruptedException {
        itsOwn = true;
        overVoice.expect(Vocabulary.ofPhrases(List.of("one")));
        overVoice.open(true);
        deaf = true;
        sound(overVoice, 0.001, 0.5);
        sound(overVoice, 0.5, 0.6);

        assertThat(out.poll(500, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void aValueThatBeganOverTheVoiceIsNotTakenByHalf() throws InterruptedException {
        itsOwn = true;
        overVoice.expect(Vocabulary.ofPhrases(List.of("one")));
        overVoice.open(true);
        deaf = true;
        sound(overVoice, 0.001, 0.5);
        sound(overVoice, 0.5, 0.3);
        deaf = false;
        sound(overVoice, 0.5, 0.3);
        sound(overVoice, 0.001, 0.5);

        LiveInput last = next();
        while (last instanceof LiveInput.Partial) {
            last = next();
        }
        assertThat(last).isInstanceOf(LiveInput.BeginningLost.class);
    }

    @Test
    void whatBeginsAfterTheVoiceIsWholeWhateverSoundedBefore() throws InterruptedException {
        itsOwn = true;
        overVoice.expect(Vocabulary.ofPhrases(List.of("one")));
        overVoice.open(true);
        deaf = true;
        sound(overVoice, 0.001, 0.5);
        // A room that is loud all at once: no word in it, and no noise yet to measure it by.
        sound(overVoice, 0.05, 0.3);
        deaf = false;
        sound(overVoice, 0.05, 0.1);
        sound(overVoice, 0.001, 1);
        sound(overVoice, 0.5, 0.3);
        sound(overVoice, 0.001, 0.5);

        assertThat(utterance()).isEqualTo("stop");
    }

    @Test
    void whereItsVoiceStaysLoudNothingIsHeardOverItAnyMore() throws InterruptedException {
        List<String> listenedFor = new CopyOnWriteArrayList<>();
        EchoCanceller useless = new EchoCanceller() {
            @Override
            public short[] cancel(short[] heard, short[] heardOfIt) {
                return heard;
            }

            @Override
            public void close() {
                listenedFor.add("closed");
            }
        };
        ScriptedEar ear = new ScriptedEar(List.of("stop"), List.of());
        itsOwn = true;
        BargeIn orders = new BargeIn(
                ear,
                useless,
                List.of("stop"),
                words -> {
                    listenedFor.add(words);
                    return itsOwn;
                },
                -55);
        try (Hearing drowned = new Hearing(
                ear, () -> deaf, Optional.of(new Hearing.OverVoice(orders, played)), false, -55, out::add)) {
            drowned.expect(Vocabulary.ofPhrases(List.of("one")));
            drowned.open(true);
            deaf = true;
            for (int second = 0; second < 30; second++) {
                while (drowned.waiting() > 100) {
                    Thread.onSpinWait();
                }
                short[] voice = new short[Ear.RATE / 2];
                java.util.Arrays.fill(voice, (short) 9000);
                played.begins(voice);
                sound(drowned, 0.3, 0.5);
                sound(drowned, 0.0005, 0.5);
            }
            assertThat(next()).isInstanceOf(LiveInput.EchoTooStrong.class);
            drowned.finish();
            assertThat(out.poll(500, TimeUnit.MILLISECONDS)).isNull();
        }
        assertThat(listenedFor).endsWith("closed");
    }

    @Test
    void aKeyEndsAnUtteranceAtOnce() throws InterruptedException {
        hearing.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        hearing.open(true);
        sound(hearing, 0.001, 0.5);
        sound(hearing, 0.5, 0.5);

        hearing.finish();

        assertThat(utterance()).isEqualTo("one");
    }

    @Test
    void wordsInSoundThatNowhereStandsOutOfTheNoiseAreDropped() throws InterruptedException {
        hearing.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        hearing.open(true);

        // Loud enough for the scripted ear, and as loud from the first moment on: a fan.
        sound(hearing, 0.5, 1);
        hearing.finish();

        LiveInput last = next();
        while (last instanceof LiveInput.Partial partial && !partial.words().isEmpty()) {
            last = next();
        }
        assertThat(last).isEqualTo(new LiveInput.Partial(""));
    }

    @Test
    void newPhrasesInMidSentenceLoseNothing() throws InterruptedException {
        hearing.expect(Vocabulary.ofPhrases(List.of("one")));
        hearing.open(true);
        sound(hearing, 0.001, 0.5);
        sound(hearing, 0.5, 0.3);

        hearing.expect(Vocabulary.ofPhrases(List.of("one", "two")));
        sound(hearing, 0.5, 0.3);
        sound(hearing, 0.001, 0.5);

        LiveInput input = next();
        while (input instanceof LiveInput.Partial) {
            input = next();
        }
        LiveInput.Spoken spoken = (LiveInput.Spoken) input;
        assertThat(spoken.utterance().endSeconds() - spoken.utterance().startSeconds())
                .isBetween(0.55, 0.65);
        assertThat(spoken.sound().seconds()).isBetween(0.95, 1.05);
    }
}
