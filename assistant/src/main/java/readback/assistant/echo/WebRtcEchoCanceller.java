package readback.assistant.echo;

import dev.onvoid.webrtc.media.audio.AudioProcessing;
import dev.onvoid.webrtc.media.audio.AudioProcessingConfig;
import dev.onvoid.webrtc.media.audio.AudioProcessingStreamConfig;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import readback.assistant.ear.Ear;

/** The third acoustic echo canceller of the WebRTC project (BSD licence), which finds the delay by itself. */
public final class WebRtcEchoCanceller implements EchoCanceller {

    private static final int FRAME_BYTES = 2 * FRAME;

    private final AudioProcessing processing;
    private final AudioProcessingStreamConfig mono = new AudioProcessingStreamConfig(Ear.RATE, 1);
    private final byte[] in = new byte[FRAME_BYTES];
    private final byte[] out = new byte[FRAME_BYTES];

    private WebRtcEchoCanceller(AudioProcessing processing) {
        this.processing = processing;
    }

    /**
     * A canceller that has heard nothing yet; it needs about a second of its own voice to adapt.
     *
     * @throws EchoCancellerUnavailableException when there is none for this operating system and processor
     */
    public static WebRtcEchoCanceller open() throws EchoCancellerUnavailableException {
        try {
            AudioProcessing processing = new AudioProcessing();
            AudioProcessingConfig config = new AudioProcessingConfig();
            config.echoCanceller.enabled = true;
            // what the acoustic model was not trained with
            config.echoCanceller.enforceHighPassFiltering = false;
            config.highPassFilter.enabled = false;
            config.noiseSuppression.enabled = false;
            config.gainControl.enabled = false;
            processing.applyConfig(config);
            return new WebRtcEchoCanceller(processing);
        } catch (LinkageError | RuntimeException e) {
            throw new EchoCancellerUnavailableException(
                    "There is no echo canceller for " + System.getProperty("os.name") + " on "
                            + System.getProperty("os.arch") + ".",
                    e);
        }
    }

    @Override
    public short[] cancel(short[] heard, short[] played) {
        write(played);
        succeed(processing.processReverseStream(in, mono, mono, out));
        write(heard);
        processing.setStreamDelayMs(0);
        succeed(processing.processStream(in, mono, mono, out));
        short[] left = new short[FRAME];
        ByteBuffer.wrap(out).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().get(left);
        return left;
    }

    private void write(short[] samples) {
        ByteBuffer.wrap(in).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().put(samples, 0, FRAME);
    }

    private static void succeed(int code) {
        if (code != 0) {
            throw new IllegalStateException("The echo canceller refuses 10 ms of sound with code " + code + ".");
        }
    }

    @Override
    public void close() {
        processing.dispose();
    }
}
