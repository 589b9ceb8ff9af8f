package readback.assistant.command;

import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;

/** Plays a replayed conversation on the loudspeaker; owns voice and loudspeaker. */
final class LoudTeller implements Teller {

    private static final int RATE = 16000;

    private final Voice voice;
    private final Loudspeaker loudspeaker;
    private final boolean pauses;

    /** @param pauses whether to wait between what is heard; false where the pauses pass otherwise */
    LoudTeller(Voice voice, Loudspeaker loudspeaker, boolean pauses) {
        this.pauses = pauses;
        this.voice = voice;
        this.loudspeaker = loudspeaker;
    }

    @Override
    public void play(Samples sound, double pauseSeconds) {
        if (pauses) {
            play(Samples.silence(pauseSeconds, RATE));
        }
        play(sound);
    }

    @Override
    public void speak(String text) {
        try {
            play(voice.speak(text));
        } catch (VoiceFailedException e) {
            throw new CommandFailure(e.getMessage() + " Leave out --aloud for the text alone.");
        }
    }

    private void play(Samples sound) {
        try {
            loudspeaker.play(sound, () -> false);
        } catch (LoudspeakerLostException e) {
            throw new CommandFailure(e.getMessage() + " Leave out --aloud for the text alone, or write the sound into a"
                    + " file with --speak-to.");
        }
    }

    @Override
    public String summary() {
        return "Spoken on " + loudspeaker.name() + " by " + voice.name() + ".";
    }

    @Override
    public void close() {
        loudspeaker.close();
        voice.close();
    }
}
