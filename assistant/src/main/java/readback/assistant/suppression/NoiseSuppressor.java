package readback.assistant.suppression;

import readback.assistant.ear.Ear;
import readback.assistant.webrtc.FrameProcessing;

/** Takes noise out of speech. It follows one stream of sound; one thread at a time. */
public interface NoiseSuppressor extends AutoCloseable {

    /** Samples of one call: 10 ms at {@link Ear#RATE}. */
    int FRAME = FrameProcessing.FRAME;

    /**
     * The sound with less noise in it, delayed by no more than a frame.
     *
     * @param frame the next {@link #FRAME} samples of the stream
     */
    short[] suppress(short[] frame);

    @Override
    void close();
}
