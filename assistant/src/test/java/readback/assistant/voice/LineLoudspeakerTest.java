package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import readback.assistant.sound.Samples;

class LineLoudspeakerTest {
    private final List<String> done = Collections.synchronizedList(new ArrayList<>());
    private final CountDownLatch writing = new CountDownLatch(1);
    private final CountDownLatch stopped = new CountDownLatch(1);
    private boolean slow;
    private boolean hangs;
    private final LineLoudspeaker loudspeaker = new LineLoudspeaker(this::line);

    @AfterEach
    void close() {
        stopped.countDown();
        loudspeaker.close();
    }

    /** A line whose writes last until it is stopped when it is slow, and for ever when it hangs. */
    private SourceDataLine line() {
        return (SourceDataLine) Proxy.newProxyInstance(
                LineLoudspeakerTest.class.getClassLoader(),
                new Class<?>[] {SourceDataLine.class},
                (proxy, method, arguments) -> {
                    if (List.of("start", "write", "stop", "flush").contains(method.getName())) {
                        done.add(method.getName());
                    }
                    return switch (method.getName()) {
                        case "isOpen" -> true;
                        case "write" -> written((int) arguments[2]);
                        case "stop" -> {
                            if (!hangs) {
                                stopped.countDown();
                            }
                            yield null;
                        }
                        default -> null;
                    };
                });
    }

    private int written(int length) throws InterruptedException {
        writing.countDown();
        if (slow) {
            stopped.await();
        }
        return length;
    }

    private static Samples seconds(double seconds) {
        return Samples.silence(seconds, LineLoudspeaker.RATE);
    }

    @Test
    void allOfASoundIsWrittenInPiecesAndNothingIsThrownAway() throws LoudspeakerLostException {
        loudspeaker.play(seconds(0.1), () -> false);

        assertThat(done).containsExactly("start", "write", "write", "write", "write");
    }

    /** Some devices take a quarter of a second for a piece; silence must come sooner. */
    @Test
    void itFallsSilentBesideAWriteThatGoesOnAndThrowsAwayWhatThatBrings() throws Exception {
        slow = true;
        AtomicBoolean stop = new AtomicBoolean();
        Thread presser = new Thread(() -> {
            try {
                writing.await();
                stop.set(true);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        presser.start();

        loudspeaker.play(seconds(3), stop::get);

        assertThat(done).containsExactly("start", "write", "stop", "flush", "flush");
        presser.join();
    }

    @Test
    void aDeviceThatTakesNothingAnyMoreIsLost() {
        slow = true;
        hangs = true;

        assertThatThrownBy(() -> loudspeaker.play(seconds(1), () -> false))
                .isInstanceOf(LoudspeakerLostException.class)
                .hasMessageContaining("takes no sound any more");
    }

    @Test
    void withoutADeviceTheReasonIsSaid() {
        LineLoudspeaker none = new LineLoudspeaker(() -> {
            throw new LineUnavailableException("this machine has none");
        });

        assertThatThrownBy(() -> none.play(seconds(1), () -> false))
                .isInstanceOf(LoudspeakerLostException.class)
                .hasMessage("There is no loudspeaker that can be used (this machine has none).");
    }
}
