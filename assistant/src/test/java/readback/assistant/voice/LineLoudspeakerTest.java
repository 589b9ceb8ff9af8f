package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.timeout;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.mockito.InOrder;
import readback.assistant.sound.Samples;

class LineLoudspeakerTest {
    private final SourceDataLine line = mock(SourceDataLine.class);
    private final InOrder order = inOrder(line);
    private final CountDownLatch writing = new CountDownLatch(1);
    private final CountDownLatch stopped = new CountDownLatch(1);
    private final LineLoudspeaker loudspeaker = new LineLoudspeaker(() -> line);

    @AfterEach
    void close() {
        stopped.countDown();
        loudspeaker.close();
    }

    /** From now on a write to the line lasts until it is stopped. */
    private void writesLast() {
        when(line.write(any(), anyInt(), anyInt())).then(call -> {
            writing.countDown();
            stopped.await();
            return call.getArgument(2);
        });
    }

    private static Samples seconds(double seconds) {
        return Samples.silence(seconds, LineLoudspeaker.RATE);
    }

    @Test
    void allOfASoundIsWrittenInPiecesAndNothingIsThrownAway() throws LoudspeakerLostException {
        loudspeaker.play(seconds(0.1), () -> false);

        order.verify(line).start();
        order.verify(line, times(4)).write(any(), anyInt(), anyInt());
        order.verifyNoMoreInteractions();
    }

    /** Some devices take a quarter of a second for a piece; silence must come sooner. */
    @Test
    void itFallsSilentBesideAWriteThatGoesOnAndThrowsAwayWhatThatBrings() throws Exception {
        writesLast();
        doAnswer(call -> {
                    stopped.countDown();
                    return null;
                })
                .when(line)
                .stop();
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

        order.verify(line).start();
        order.verify(line).write(any(), anyInt(), anyInt());
        order.verify(line).stop();
        order.verify(line, times(2)).flush();
        order.verifyNoMoreInteractions();
        presser.join();
    }

    /** So often it is looked at in two seconds by a machine that has time; what stops the sound is asked each time. */
    @Test
    void aDeviceThatIsSlowIsNotLost() throws LoudspeakerLostException {
        writesLast();
        AtomicInteger looks = new AtomicInteger();

        loudspeaker.play(seconds(0.1), () -> {
            if (looks.incrementAndGet() > 500) {
                stopped.countDown();
            }
            return false;
        });

        order.verify(line).start();
        order.verify(line, times(4)).write(any(), anyInt(), anyInt());
        order.verifyNoMoreInteractions();
    }

    @Test
    void aDeviceThatTakesNothingAnyMoreIsLost() {
        writesLast();

        assertThatThrownBy(() -> loudspeaker.play(seconds(1), () -> false))
                .isInstanceOf(LoudspeakerLostException.class)
                .hasMessageContaining("takes no sound any more");
    }

    /** A line that ran dry on a machine without time took nothing for as long as it was waited. */
    @Test
    void a_line_that_took_sound_and_takes_none_any_more_is_left_for_a_fresh_one() throws Exception {
        SourceDataLine fresh = mock(SourceDataLine.class);
        Iterator<SourceDataLine> lines = List.of(line, fresh).iterator();
        LineLoudspeaker two = new LineLoudspeaker(lines::next);
        when(line.isOpen()).thenReturn(true);
        when(line.write(any(), anyInt(), anyInt())).thenReturn(1).thenReturn(1).then(call -> stuck());

        two.play(seconds(0.1), () -> false);

        verify(line, timeout(10_000)).close();
        verify(fresh).start();
        verify(fresh, times(2)).write(any(), anyInt(), anyInt());
        two.close();
    }

    private int stuck() throws InterruptedException {
        stopped.await();
        return 0;
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
