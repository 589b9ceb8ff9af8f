package readback.assistant.microphone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class MicrophoneReaderTest {
    private final BlockingQueue<String> events = new LinkedBlockingQueue<>();
    private final AtomicInteger opened = new AtomicInteger();

    /** There at the first and third try; gives two chunks, loses some sound on the way, and is pulled out. */
    private Microphone open() throws MicrophoneLostException {
        if (opened.incrementAndGet() == 2) {
            throw new MicrophoneLostException("There is none.");
        }
        return new Microphone() {
            private int reads;

            @Override
            public String name() {
                return "pulled";
            }

            @Override
            public short[] read() throws MicrophoneLostException {
                if (++reads > 2) {
                    throw new MicrophoneLostException("It gives no sound any more.");
                }
                return new short[reads];
            }

            @Override
            public long overruns() {
                return reads - 1L;
            }

            @Override
            public void close() {
                events.add("closed");
            }
        };
    }

    private final class Follower implements MicrophoneReader.Listener {
        @Override
        public void sound(short[] chunk) {
            events.add("sound " + chunk.length);
        }

        @Override
        public void found(String device) {
            events.add("found " + device);
        }

        @Override
        public void lost(String why) {
            events.add("lost: " + why);
        }

        @Override
        public void overrun(long count) {
            events.add("overruns " + count);
        }
    }

    @Test
    void aMicrophoneThatIsPulledOutIsTakenUpAgainWhenItIsBack() throws InterruptedException {
        try (MicrophoneReader reader = new MicrophoneReader(this::open, new Follower())) {
            reader.start();

            for (String expected : new String[] {
                "found pulled",
                "sound 1",
                "sound 2",
                "overruns 1",
                "closed",
                "lost: It gives no sound any more.",
                "found pulled",
                "sound 1",
                "sound 2"
            }) {
                assertThat(events.poll(10, TimeUnit.SECONDS)).isEqualTo(expected);
            }
        }
    }
}
