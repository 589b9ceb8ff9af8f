package readback.assistant.voice;

import java.util.function.BooleanSupplier;
import readback.assistant.sound.Samples;

/** Something that makes sound audible. One thread plays. */
public interface Loudspeaker extends AutoCloseable {

    /** The device as the user knows it. */
    String name();

    /**
     * Plays the sound to its end, or falls silent within a tenth of a second of {@code stop} becoming true.
     *
     * @param stop asked every few milliseconds, on the playing thread
     * @throws LoudspeakerLostException when the device does not take sound any more
     */
    void play(Samples sound, BooleanSupplier stop) throws LoudspeakerLostException;

    /** Never blocks, even when the device hangs. */
    @Override
    void close();
}
