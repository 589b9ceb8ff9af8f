package readback.assistant.echo;

import readback.assistant.ear.Ear;
import readback.assistant.webrtc.FrameProcessing;

/** Takes what a loudspeaker plays out of what a microphone hears. One thread at a time. */
public interface EchoCanceller extends AutoCloseable {

    /** Samples of one call: 10 ms at {@link Ear#RATE}. */
    int FRAME = FrameProcessing.FRAME;

    /**
     * What was heard without the echo.
     *
     * @param heard {@link #FRAME} samples from the microphone
     * @param played as many that went to the loudspeaker; they may lead what is heard by up to some 400 ms, by about
     *     the same time from call to call; zeros where nothing was played
     */
    short[] cancel(short[] heard, short[] played);

    @Override
    void close();
}
