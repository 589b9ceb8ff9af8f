package readback.assistant.echo;

import java.util.function.BooleanSupplier;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;

/** A loudspeaker that tells what it plays to whoever takes its echo away. */
public final class MonitoredLoudspeaker implements Loudspeaker {

    private final Loudspeaker loudspeaker;
    private final PlayedSound played;

    /** The loudspeaker, which this one owns from now on. */
    public MonitoredLoudspeaker(Loudspeaker loudspeaker, PlayedSound played) {
        this.loudspeaker = loudspeaker;
        this.played = played;
    }

    @Override
    public String name() {
        return loudspeaker.name();
    }

    @Override
    public void play(Samples sound, BooleanSupplier stop) throws LoudspeakerLostException {
        played.begins(sound.at(Ear.RATE).pcm());
        try {
            loudspeaker.play(sound, stop);
        } finally {
            if (stop.getAsBoolean()) {
                played.ends();
            }
        }
    }

    @Override
    public void close() {
        loudspeaker.close();
    }
}
