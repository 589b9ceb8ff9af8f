package readback.assistant.live;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import readback.assistant.voice.PhrasePlayer;

/** What happened outside, in its order, for the owner thread of a {@link LiveSession}. Any thread may post. */
final class InputQueue implements PhrasePlayer.Listener {

    private final BlockingQueue<LiveInput> inputs = new LinkedBlockingQueue<>();

    void post(LiveInput input) {
        inputs.add(input);
    }

    /** The next input, if there is one before the time is over. */
    Optional<LiveInput> next(Duration longest) throws InterruptedException {
        return Optional.ofNullable(inputs.poll(longest.toMillis(), TimeUnit.MILLISECONDS));
    }

    @Override
    public void started() {
        post(new LiveInput.VoiceStarted(System.nanoTime()));
    }

    @Override
    public void ended() {
        post(new LiveInput.VoiceEnded());
    }

    @Override
    public void failed(String why) {
        post(new LiveInput.VoiceFailed(why));
    }
}
