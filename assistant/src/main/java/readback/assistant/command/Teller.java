package readback.assistant.command;

import readback.assistant.sound.Samples;

/** Makes a replayed conversation heard: both sides, in their order. One thread. */
interface Teller extends AutoCloseable {

    /** What the technician said, after a pause. */
    void play(Samples sound, double pauseSeconds);

    /** What was answered. */
    void speak(String text);

    /** One line for the user when it is over. */
    String summary();

    @Override
    void close();
}
