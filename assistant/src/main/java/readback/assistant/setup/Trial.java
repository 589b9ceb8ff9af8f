package readback.assistant.setup;

/**
 * Something that takes sound until it has enough of it, and tells what came of it as a {@link SetupEvent}. It belongs
 * to one step and ends with it, by its outcome or because the step was left; the way on and back is that of every step
 * ({@link Setup}).
 */
interface Trial {

    /** A piece of sound, and what the loudspeaker played at that time. */
    void sound(short[] chunk, short[] playedThen);

    /** Whether somebody is to speak now. */
    default boolean listens() {
        return false;
    }

    /** It has enough, or is of no use any more. */
    default void over() {
        // nothing is held
    }
}
