package readback.assistant.suppression;

import dev.onvoid.webrtc.media.audio.AudioProcessing;
import dev.onvoid.webrtc.media.audio.AudioProcessingConfig;
import dev.onvoid.webrtc.media.audio.AudioProcessingConfig.NoiseSuppression;
import dev.onvoid.webrtc.media.audio.AudioProcessingStreamConfig;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import readback.assistant.ear.Ear;

/** The noise suppressor of the WebRTC project (BSD licence). */
public final class WebRtcNoiseSuppressor implements NoiseSuppressor {

    private static final int FRAME_BYTES = 2 * FRAME;

    private final AudioProcessing processing;
    private final AudioProcessingStreamConfig mono = new AudioProcessingStreamConfig(Ear.RATE, 1);
    private final byte[] in = new byte[FRAME_BYTES];
    private final byte[] out = new byte[FRAME_BYTES];

    private WebRtcNoiseSuppressor(AudioProcessing processing) {
        this.processing = processing;
    }

    /**
     * A suppressor that has heard nothing yet; it needs about a second to know the noise.
     *
     * @throws NoiseSuppressorUnavailableException when there is none for this operating system and processor
     */
    public static WebRtcNoiseSuppressor open(Strength strength) throws NoiseSuppressorUnavailableException {
        try {
            AudioProcessing processing = new AudioProcessing();
            AudioProcessingConfig config = new AudioProcessingConfig();
            config.noiseSuppression.enabled = true;
            config.noiseSuppression.level = level(strength);
            // what the acoustic model was not trained with
            config.highPassFilter.enabled = false;
            config.echoCanceller.enabled = false;
            config.gainControl.enabled = false;
            processing.applyConfig(config);
            return new WebRtcNoiseSuppressor(processing);
        } catch (LinkageError | RuntimeException e) {
            throw new NoiseSuppressorUnavailableException(
                    "There is no noise suppressor for " + System.getProperty("os.name") + " on "
                            + System.getProperty("os.arch") + ".",
                    e);
        }
    }

    private static NoiseSuppression.Level level(Strength strength) {
        return switch (strength) {
            case LOW -> NoiseSuppression.Level.LOW;
            case MODERATE -> NoiseSuppression.Level.MODERATE;
            case HIGH -> NoiseSuppression.Level.HIGH;
        };
    }

    @Override
    public short[] suppress(short[] frame) {
        ByteBuffer.wrap(in).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().put(frame, 0, FRAME);
        int code = processing.processStream(in, mono, mono, out);
        if (code != 0) {
            throw new IllegalStateException("The noise suppressor refuses 10 ms of sound with code " + code + ".");
        }
        short[] left = new short[FRAME];
        ByteBuffer.wrap(out).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().get(left);
        return left;
    }

    @Override
    public void close() {
        processing.dispose();
    }
}
