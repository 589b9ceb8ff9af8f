package readback.assistant.session;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.assistant.voice.SpokenConversation;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;

/**
 * Speaks a session into a sound file. Trouble with voice or file is told once and ends the speaking, not the session.
 */
public final class SpeakingAudience implements Audience {

    private final Voice voice;
    private final SpokenConversation conversation;
    private final Consumer<String> complaints;
    private double heardUntil;
    private boolean failed;

    /** @param complaints gets one sentence when speaking fails */
    public SpeakingAudience(Voice voice, SpokenConversation conversation, Consumer<String> complaints) {
        this.voice = voice;
        this.conversation = conversation;
        this.complaints = complaints;
    }

    @Override
    public void happened(Event event, Turn turn) {
        if (event instanceof Event.Heard heard) {
            attempt(() -> conversation.listen(secondsOf(heard)));
        }
    }

    /** How long the technician spoke, with the pause before; typed words take no time. */
    private double secondsOf(Event.Heard heard) {
        Optional<Double> end = heard.hypotheses().stream()
                .flatMap(hypothesis -> hypothesis.details().stream())
                .map(word -> word.end())
                .max(Double::compare);
        double seconds = Math.max(0, end.orElse(heardUntil) - heardUntil);
        heardUntil = end.orElse(heardUntil);
        return seconds;
    }

    @Override
    public void says(List<Line> lines) {
        String text = lines.stream()
                .map(Line::spoken)
                .filter(spoken -> !spoken.isEmpty())
                .collect(Collectors.joining(" "));
        attempt(() -> conversation.say(voice.speak(text)));
    }

    private void attempt(Speech speech) {
        if (failed) {
            return;
        }
        try {
            speech.perform();
        } catch (IOException | VoiceFailedException e) {
            failed = true;
            complaints.accept("Speaking stopped (" + e.getMessage() + "); the text goes on.");
        }
    }

    /** Something that may fail on the way to the file. */
    private interface Speech {
        void perform() throws IOException, VoiceFailedException;
    }
}
