package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import readback.assistant.sound.Samples;

class PhrasePlayerTest {
    private final BlockingQueue<String> events = new LinkedBlockingQueue<>();
    private final CountDownLatch goOn = new CountDownLatch(1);
    private final PhrasePlayer player = new PhrasePlayer(new Lengths(), new Sink(), new Follower());

    /** Speaks every text as a loud sound, as many hundredths of a second long as the text has letters. */
    private static final class Lengths implements Voice {
        @Override
        public String name() {
            return "lengths";
        }

        @Override
        public Samples speak(String text) throws VoiceFailedException {
            if (text.equals("unspeakable")) {
                throw new VoiceFailedException("It cannot be said.");
            }
            short[] loud = new short[text.length() * 160];
            java.util.Arrays.fill(loud, (short) 8000);
            return Samples.of(loud, 16000);
        }

        @Override
        public void close() {}
    }

    /** "Plays" to the end at once, save for a sound of 99 letters, which lasts until it is silenced or released. */
    private final class Sink implements Loudspeaker {
        @Override
        public String name() {
            return "player";
        }

        @Override
        public void play(Samples sound, BooleanSupplier stop) {
            int letters = Math.round(sound.length() / 160f);
            boolean released = letters < 99;
            while (!released && !stop.getAsBoolean()) {
                try {
                    released = goOn.await(2, TimeUnit.MILLISECONDS);
                } catch (InterruptedException e) {
                    released = true;
                }
            }
            events.add((stop.getAsBoolean() ? "silenced " : "played ") + letters);
        }

        @Override
        public void close() {}
    }

    private final class Follower implements PhrasePlayer.Listener {
        @Override
        public void started() {
            events.add("started");
        }

        @Override
        public void ended() {
            events.add("ended");
        }

        @Override
        public void failed(String why) {
            events.add("failed: " + why);
        }
    }

    @AfterEach
    void close() {
        player.close();
    }

    private String next() throws InterruptedException {
        return events.poll(10, TimeUnit.SECONDS);
    }

    @Test
    void phrasesAreSaidInOrderAsOneSaying() throws InterruptedException {
        player.say(List.of("1234567890", "", "12345"));

        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("played 10");
        // The second one begins with a breath of 20 hundredths.
        assertThat(next()).isEqualTo("played 25");
        assertThat(next()).isEqualTo("ended");
        assertThat(player.speaking()).isFalse();
        assertThat(player.audible()).as("the echo is still in the room").isTrue();
    }

    @Test
    void whatIsSaidAfterAChangeOfMannerIsInTheNewOne() throws InterruptedException {
        player.say(List.of("x".repeat(40)));
        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("played 40");
        assertThat(next()).isEqualTo("ended");

        player.speaking(Manner.percent(100, 200));
        player.say(List.of("x".repeat(40)));

        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("played 20");
    }

    @Test
    void hushSilencesWhatIsPlayingAndWhatWaits() throws InterruptedException {
        player.say(List.of("x".repeat(99), "waiting"));
        assertThat(next()).isEqualTo("started");

        assertThat(player.hush()).as("what was not said to its end").containsExactly("x".repeat(99), "waiting");
        assertThat(player.hush()).as("it is told once").isEmpty();

        assertThat(next()).isEqualTo("silenced 99");
        assertThat(next()).isEqualTo("ended");
        player.say(List.of("again"));
        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("played 5");
    }

    @Test
    void whatWaitsAlreadyIsNotSaidTwice() throws InterruptedException {
        player.say(List.of("x".repeat(99)));
        assertThat(next()).isEqualTo("started");

        player.say(List.of("once"));
        player.say(List.of("once"));
        goOn.countDown();

        assertThat(next()).isEqualTo("played 99");
        assertThat(next()).isEqualTo("played 24");
        assertThat(next()).isEqualTo("ended");
    }

    /** Making takes a voice a good deal of the time in which an answer should come. */
    @Test
    void whatWasExpectedAndIsNotWantedAnyMoreDoesNotDelayWhatIs() throws InterruptedException {
        BlockingQueue<String> made = new LinkedBlockingQueue<>();
        CountDownLatch first = new CountDownLatch(1);
        try (PhrasePlayer ready = new PhrasePlayer(new Slow(made, first), new Sink(), new Follower())) {
            ready.expect(List.of("one", "two", "three"));
            assertThat(made.poll(10, TimeUnit.SECONDS)).isEqualTo("one");
            ready.expect(List.of("three", "four"));

            ready.say(List.of("four"));
            first.countDown();

            assertThat(made.poll(10, TimeUnit.SECONDS)).isEqualTo("four");
            assertThat(next()).isEqualTo("started");
        }
        assertThat(made).isEmpty();
    }

    /** Makes nothing before it is let. */
    private record Slow(BlockingQueue<String> made, CountDownLatch let) implements Voice {
        @Override
        public String name() {
            return "slow";
        }

        @Override
        public Samples speak(String text) throws VoiceFailedException {
            made.add(text);
            try {
                let.await();
            } catch (InterruptedException e) {
                throw new VoiceFailedException("Interrupted.", e);
            }
            return Samples.silence(0.1, 16000);
        }

        @Override
        public void close() {}
    }

    @Test
    void aPhraseThatCannotBeSaidIsToldAndTheRestGoesOn() throws InterruptedException {
        player.say(List.of("unspeakable", "fine"));

        assertThat(next()).isEqualTo("failed: It cannot be said.");
        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("played 4");
        assertThat(next()).isEqualTo("ended");
    }

    @Test
    void onceItIsClosedItSaysNothingAndComplainsOfNothing() throws InterruptedException {
        player.close();

        player.say(List.of("too late"));
        player.expect(List.of("too late"));
        player.prepare(List.of("too late"));

        assertThat(events.poll(100, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void withoutAVoiceAToneSounds() throws InterruptedException {
        try (PhrasePlayer dumb = new PhrasePlayer(new NoVoice(), new Sink(), new Follower())) {
            dumb.say(List.of("anything"));

            assertThat(next()).isEqualTo("started");
            assertThat(next()).isEqualTo("played 20");
        }
    }
}
