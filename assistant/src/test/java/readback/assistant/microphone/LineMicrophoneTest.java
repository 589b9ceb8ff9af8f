package readback.assistant.microphone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

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
        TargetDataLine line = mock(TargetDataLine.class);
        when(line.available()).thenReturn(available);
        when(line.getBufferSize()).thenReturn(BUFFER);
        when(line.getFormat()).thenReturn(format);
        when(line.read(any(), anyInt(), anyInt()))
                .then(call -> broken ? -1 : filled(call.getArgument(0), call.getArgument(2)));
        return line;
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
