package readback.assistant.suppression;

import dev.onvoid.webrtc.media.audio.AudioProcessingConfig.NoiseSuppression;
import readback.assistant.webrtc.FrameProcessing;
import readback.assistant.webrtc.ProcessingUnavailableException;

/** The noise suppressor of the WebRTC project (BSD licence). */
public final class WebRtcNoiseSuppressor implements NoiseSuppressor {

    private final FrameProcessing processing;

    private WebRtcNoiseSuppressor(FrameProcessing processing) {
        this.processing = processing;
    }

    /**
     * A suppressor that has heard nothing yet; it needs about a second to know the noise.
     *
     * @throws ProcessingUnavailableException when there is none for this operating system and processor
     */
    public static WebRtcNoiseSuppressor open(Strength strength) throws ProcessingUnavailableException {
        return new WebRtcNoiseSuppressor(FrameProcessing.open("noise suppressor", config -> {
            config.noiseSuppression.enabled = true;
            config.noiseSuppression.level = level(strength);
        }));
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
        return processing.processed(frame);
    }

    @Override
    public void close() {
        processing.close();
    }
}
