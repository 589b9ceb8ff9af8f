package readback.assistant.echo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;
import readback.assistant.webrtc.ProcessingUnavailableException;

/** The canceller that comes with a library, in simulated rooms. */
class WebRtcEchoCancellerTest {

    /** Bursts of noise with the rhythm of speech. */
    static short[] voice(double seconds) {
        Random random = new Random(1);
        short[] voice = new short[(int) (seconds * Ear.RATE)];
        double low = 0;
        for (int i = 0; i < voice.length; i++) {
            low = 0.8 * low + random.nextGaussian();
            boolean syllable = i % (Ear.RATE / 3) < Ear.RATE / 5;
            voice[i] = (short) (syllable ? 2000 * low : 0);
        }
        return voice;
    }

    private static short[] cleaned(short[] heard, short[] played) throws ProcessingUnavailableException {
        try (EchoFilter filter = new EchoFilter(WebRtcEchoCanceller.open())) {
            return filter.clean(heard, played);
        }
    }

    private static double power(short[] sound, int from) {
        double sum = 0;
        for (int i = from; i < sound.length; i++) {
            sum += (double) sound[i] * sound[i];
        }
        return sum / (sound.length - from);
    }

    static short[] rounded(double[] sound) {
        short[] rounded = new short[sound.length];
        for (int i = 0; i < sound.length; i++) {
            rounded[i] = (short) Math.round(Math.max(-32768, Math.min(32767, sound[i])));
        }
        return rounded;
    }

    @Test
    void after_three_seconds_the_echo_is_less_than_a_thirtieth_of_its_power() throws Exception {
        short[] played = voice(8);
        for (Room room : new Room[] {new Room(20, 0.3), new Room(150, 0.5), new Room(350, 0.3)}) {
            short[] heard = rounded(room.heard(played));
            short[] left = cleaned(heard, played);
            assertThat(power(left, 3 * Ear.RATE)).as(room.toString()).isLessThan(power(heard, 3 * Ear.RATE) / 30);
        }
    }

    @Test
    void where_nothing_is_played_everything_stays() throws Exception {
        short[] speech = voice(4);
        short[] left = cleaned(speech, new short[speech.length]);
        assertThat(power(left, Ear.RATE)).isBetween(0.5 * power(speech, Ear.RATE), 1.2 * power(speech, Ear.RATE));
    }

    @Test
    void sound_in_pieces_of_any_length_comes_out_as_in_one() throws Exception {
        short[] played = voice(1);
        short[] heard = rounded(new Room(20, 0.3).heard(played));
        short[] whole = cleaned(heard, played);
        try (EchoFilter filter = new EchoFilter(WebRtcEchoCanceller.open())) {
            int at = 0;
            int done = 0;
            for (int length = 1; at + length <= heard.length; length += 37) {
                short[] part = filter.clean(
                        Arrays.copyOfRange(heard, at, at + length), Arrays.copyOfRange(played, at, at + length));
                assertThat(part).isEqualTo(Arrays.copyOfRange(whole, done, done + part.length));
                at += length;
                done += part.length;
            }
            assertThat(done).isGreaterThan(Ear.RATE / 2);
        }
    }
}
