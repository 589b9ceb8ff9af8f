package readback.assistant.voice;

import readback.assistant.sound.Samples;

/** Something that can speak: it turns text into sound. Any thread; engines that cannot do two at once take turns. */
public interface Voice extends AutoCloseable {
    /** Engine and voice, for the user and the session record, as in "flite, rms". */
    String name();

    /**
     * The text spoken. Numbers and abbreviations must be spelled out in words before: engines read them badly.
     *
     * @param text words with commas and full stops where a pause belongs; empty gives no sound
     * @throws VoiceFailedException when the engine fails; the text must then reach the user by other ways
     */
    Samples speak(String text) throws VoiceFailedException;

    @Override
    void close();
}
