package readback.assistant.webrtc;

import dev.onvoid.webrtc.media.audio.AudioProcessing;
import dev.onvoid.webrtc.media.audio.AudioProcessingConfig;
import dev.onvoid.webrtc.media.audio.AudioProcessingStreamConfig;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.function.Consumer;
import readback.assistant.ear.Ear;

/** Sends a stream of sound through the audio processing, 10 ms at a time. One thread at a time. */
public final class FrameProcessing implements AutoCloseable {

    /** Samples of one call: 10 ms at {@link Ear#RATE}. */
    public static final int FRAME = Ear.RATE / 100;

    private final String what;
    private final AudioProcessing processing;
    private final AudioProcessingStreamConfig mono = new AudioProcessingStreamConfig(Ear.RATE, 1);
    private final byte[] in = new byte[2 * FRAME];
    private final byte[] out = new byte[2 * FRAME];

    private FrameProcessing(String what, AudioProcessing processing) {
        this.what = what;
        this.processing = processing;
    }

    /**
     * Processing that has heard nothing yet. Nothing is switched on but what {@code switching} switches on: the
     * acoustic model was trained without it.
     *
     * @param what it is to do, as in "echo canceller"
     * @throws ProcessingUnavailableException when there is none for this operating system and processor
     */
    public static FrameProcessing open(String what, Consumer<AudioProcessingConfig> switching)
            throws ProcessingUnavailableException {
        try {
            AudioProcessing processing = new AudioProcessing();
            AudioProcessingConfig config = new AudioProcessingConfig();
            config.echoCanceller.enabled = false;
            config.echoCanceller.enforceHighPassFiltering = false;
            config.noiseSuppression.enabled = false;
            config.highPassFilter.enabled = false;
            config.gainControl.enabled = false;
            switching.accept(config);
            processing.applyConfig(config);
            return new FrameProcessing(what, processing);
        } catch (LinkageError | RuntimeException e) {
            throw new ProcessingUnavailableException(
                    "There is no " + what + " for " + System.getProperty("os.name") + " on "
                            + System.getProperty("os.arch") + ".",
                    e);
        }
    }

    /** Tells what goes to the loudspeaker while the next frame is heard. */
    public void played(short[] frame) {
        write(frame);
        succeed(processing.processReverseStream(in, mono, mono, out));
        processing.setStreamDelayMs(0);
    }

    /**
     * What is left of a frame that was heard.
     *
     * @param frame the next {@link #FRAME} samples of the stream
     */
    public short[] processed(short[] frame) {
        write(frame);
        succeed(processing.processStream(in, mono, mono, out));
        short[] left = new short[FRAME];
        ByteBuffer.wrap(out).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().get(left);
        return left;
    }

    private void write(short[] samples) {
        ByteBuffer.wrap(in).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().put(samples, 0, FRAME);
    }

    private void succeed(int code) {
        if (code != 0) {
            throw new IllegalStateException("The " + what + " refuses 10 ms of sound with code " + code + ".");
        }
    }

    @Override
    public void close() {
        processing.dispose();
    }
}
