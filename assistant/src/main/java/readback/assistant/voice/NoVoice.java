package readback.assistant.voice;

import readback.assistant.sound.Samples;

/** The voice of those who only read: every text is no sound. */
final class NoVoice implements Voice {
    private static final int RATE = 16000;

    @Override
    public String name() {
        return "none";
    }

    @Override
    public Samples speak(String text) {
        return Samples.silence(0, RATE);
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}
