package readback.assistant.microphone;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import readback.assistant.sound.Resampler;

/**
 * A microphone over a line of the Java platform, converted to our rate and one channel where the device has another.
 *
 * <p>A line whose device is gone may block in a read for ever. So nothing is read that is not there yet, and a device
 * that gives nothing for {@link #PATIENCE} counts as lost.
 */
final class LineMicrophone implements Microphone {

    /** A tenth of a second: reads come every 30 ms, and a short stall of the program loses nothing. */
    private static final double BUFFER_SECONDS = 0.1;

    /** Sound is taken once this much is there. */
    private static final double CHUNK_SECONDS = 0.02;

    /** A microphone that gives nothing for this long is lost; decision 0014. */
    private static final Duration PATIENCE = Duration.ofSeconds(1);

    /** A device that just woke up takes its time: sound servers were seen to need two seconds. */
    private static final Duration FIRST_PATIENCE = Duration.ofSeconds(4);

    private static final Duration POLL = Duration.ofMillis(4);

    private final String name;
    private final TargetDataLine line;
    private final int channels;
    private final int chunkBytes;
    private final Resampler resampler;
    private long overruns;
    private boolean flowing;

    private LineMicrophone(String name, TargetDataLine line, AudioFormat format) {
        this.name = name;
        this.line = line;
        this.channels = format.getChannels();
        this.chunkBytes = bytes(format, CHUNK_SECONDS);
        this.resampler = new Resampler((int) format.getSampleRate(), RATE);
    }

    static LineMicrophone of(String name, TargetDataLine line, AudioFormat format) throws LineUnavailableException {
        line.open(format, bytes(format, BUFFER_SECONDS));
        line.start();
        return new LineMicrophone(name, line, format);
    }

    private static int bytes(AudioFormat format, double seconds) {
        return (int) Math.round(seconds * format.getSampleRate()) * format.getFrameSize();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public long overruns() {
        return overruns;
    }

    @Override
    public short[] read() throws MicrophoneLostException {
        int there = waitForSound();
        if (there >= line.getBufferSize()) {
            overruns++;
        }
        byte[] bytes = new byte[there - there % (2 * channels)];
        int taken = line.read(bytes, 0, bytes.length);
        if (taken <= 0) {
            throw lost();
        }
        short[] mono = mono(bytes, taken / (2 * channels));
        return (int) line.getFormat().getSampleRate() == RATE ? mono : resampler.feed(mono);
    }

    private int waitForSound() throws MicrophoneLostException {
        long deadline = System.nanoTime() + (flowing ? PATIENCE : FIRST_PATIENCE).toNanos();
        int there = line.available();
        while (there < chunkBytes) {
            if (System.nanoTime() > deadline
                    || !line.isOpen()
                    || Thread.currentThread().isInterrupted()) {
                throw lost();
            }
            LockSupport.parkNanos(POLL.toNanos());
            there = line.available();
        }
        flowing = true;
        return there;
    }

    private MicrophoneLostException lost() {
        return new MicrophoneLostException("The microphone '" + name + "' gives no sound any more.");
    }

    /** The mean of the channels. */
    private short[] mono(byte[] bytes, int frames) {
        short[] mono = new short[frames];
        for (int frame = 0; frame < frames; frame++) {
            int sum = 0;
            for (int channel = 0; channel < channels; channel++) {
                int at = 2 * (frame * channels + channel);
                sum += (bytes[at] & 0xff) | (bytes[at + 1] << 8);
            }
            mono[frame] = (short) (sum / channels);
        }
        return mono;
    }

    @Override
    public void close() {
        // Closing a line of a server that is gone can hang for ever, so nobody waits for it.
        Thread closing = new Thread(line::close, "microphone-close");
        closing.setDaemon(true);
        closing.start();
    }
}
