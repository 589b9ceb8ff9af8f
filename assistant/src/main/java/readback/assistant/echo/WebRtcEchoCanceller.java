package readback.assistant.echo;

import readback.assistant.webrtc.FrameProcessing;
import readback.assistant.webrtc.ProcessingUnavailableException;

/** The third acoustic echo canceller of the WebRTC project (BSD licence), which finds the delay by itself. */
public final class WebRtcEchoCanceller implements EchoCanceller {

    private final FrameProcessing processing;

    private WebRtcEchoCanceller(FrameProcessing processing) {
        this.processing = processing;
    }

    /**
     * A canceller that has heard nothing yet; it needs about a second of its own voice to adapt.
     *
     * @throws ProcessingUnavailableException when there is none for this operating system and processor
     */
    public static WebRtcEchoCanceller open() throws ProcessingUnavailableException {
        return new WebRtcEchoCanceller(
                FrameProcessing.open("echo canceller", config -> config.echoCanceller.enabled = true));
    }

    @Override
    public short[] cancel(short[] heard, short[] played) {
        processing.played(played);
        return processing.processed(heard);
    }

    @Override
    public void close() {
        processing.close();
    }
}
