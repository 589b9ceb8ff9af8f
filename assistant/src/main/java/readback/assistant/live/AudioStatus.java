package readback.assistant.live;

import java.time.Instant;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.View;

/**
 * How microphone, voice and room are, and what to do about trouble with them, as a screen shows it. Owned by the
 * session's thread.
 */
final class AudioStatus {

    private final ScreenTexts texts;
    private final NoiseWatch noise = new NoiseWatch();
    private String microphone = "";
    private boolean works;
    private boolean missed;
    private long overruns;
    private String trouble = "";
    private String voiceTrouble = "";
    private String soundTrouble = "";
    private String echoTrouble = "";

    AudioStatus(ScreenTexts texts) {
        this.texts = texts;
    }

    /** The microphone gives sound; whether it was missed before. */
    boolean microphoneFound(String device) {
        boolean back = missed;
        microphone = device;
        works = true;
        missed = false;
        trouble = "";
        return back;
    }

    void microphoneLost(String why) {
        works = false;
        missed = true;
        trouble = texts.of("hint.microphone", why);
    }

    boolean microphoneWorks() {
        return works;
    }

    /** Sound was lost once more. */
    void overrun() {
        overruns++;
    }

    long overruns() {
        return overruns;
    }

    void voiceWorks() {
        voiceTrouble = "";
    }

    void voiceFailed(String why) {
        voiceTrouble = texts.of("hint.voice", why);
    }

    /** The sound of utterances is not kept from here on. */
    void soundNotKept(String why) {
        soundTrouble = texts.of("hint.sound", why);
    }

    /** Nothing is heard any more while Readback speaks. */
    void onlyInSilence(String why) {
        echoTrouble = why;
    }

    /**
     * Takes the next utterance; whether it should be said now that it is too loud.
     *
     * @param aboveNoise decibels between the loudest speech and the noise
     */
    boolean spoken(double aboveNoise, Instant now) {
        return noise.heard(aboveNoise, now);
    }

    /** What to do about the gravest trouble; empty when there is none. */
    String hint() {
        if (!trouble.isEmpty() || !voiceTrouble.isEmpty()) {
            return trouble.isEmpty() ? voiceTrouble : trouble;
        }
        if (noise.loud()) {
            return texts.of("hint.noise");
        }
        return soundTrouble.isEmpty() ? echoTrouble : soundTrouble;
    }

    /**
     * Microphone and voice at this moment.
     *
     * @param level of the last sound, in decibels of full scale
     * @param voice its name
     */
    View.Status status(double level, boolean listening, String voice, boolean speaking) {
        String state = !voiceTrouble.isEmpty() ? "none" : speaking ? "speaking" : "silent";
        return new View.Status(
                microphone,
                works,
                listening,
                works ? View.Status.steps(level) : 0,
                overruns,
                texts.of("status.voice." + state, voice));
    }
}
