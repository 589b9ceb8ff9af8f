package readback.assistant.microphone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.junit.jupiter.api.Test;

class LineMicrophoneTest {
    private static final int BUFFER = 6400;

    /**
     * A line that always has so many bytes, all pairs of samples 100 and 300; nothing can be read when it is broken.
     */
    private static TargetDataLine line(AudioFormat format, int available, boolean broken) {
        return (TargetDataLine) Proxy.newProxyInstance(
                LineMicrophoneTest.class.getClassLoader(),
                new Class<?>[] {TargetDataLine.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "available" -> available;
                    case "getBufferSize" -> BUFFER;
                    case "getFormat" -> format;
                    case "isOpen" -> true;
                    case "read" -> broken ? -1 : filled((byte[]) arguments[0], (int) arguments[2]);
                    default -> null;
                });
    }

    private static int filled(byte[] bytes, int length) {
        for (int i = 0; i < length; i += 2) {
            int sample = i % 4 == 0 ? 100 : 300;
            bytes[i] = (byte) sample;
            bytes[i + 1] = (byte) (sample >> 8);
        }
        return length;
    }

    private static Microphone of(int channels, int available, boolean broken) throws LineUnavailableException {
        AudioFormat format = new AudioFormat(Microphone.RATE, 16, channels, true, false);
        return LineMicrophone.of("test", line(format, available, broken), format);
    }

    @Test
    void twoChannelsBecomeTheirMean() throws LineUnavailableException, MicrophoneLostException {
        assertThat(of(2, 1280, false).read()).hasSize(320).containsOnly(200);
    }

    @Test
    void oneChannelIsTakenAsItIs() throws LineUnavailableException, MicrophoneLostException {
        assertThat(of(1, 640, false).read()).hasSize(320).startsWith(100, 300);
    }

    @Test
    void aFullBufferCountsAsLostSound() throws LineUnavailableException, MicrophoneLostException {
        Microphone microphone = of(1, BUFFER, false);
        microphone.read();
        microphone.read();

        assertThat(microphone.overruns()).isEqualTo(2);
    }

    @Test
    void aLineThatCannotBeReadIsLost() throws LineUnavailableException {
        Microphone microphone = of(1, 640, true);

        assertThatThrownBy(microphone::read)
                .isInstanceOf(MicrophoneLostException.class)
                .hasMessage("The microphone 'test' gives no sound any more.");
    }
}
