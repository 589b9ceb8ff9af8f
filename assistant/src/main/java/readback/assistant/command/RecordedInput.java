package readback.assistant.command;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.assistant.session.Alarm;
import readback.assistant.session.PlainLines;
import readback.assistant.session.Session;
import readback.assistant.sound.Samples;

/** Recordings, one after the other, heard with the vocabulary of the step that each utterance meets. */
record RecordedInput(Desk desk, Console console, List<AudioFiles.Playable> recordings, Ear ear, boolean keepsAudio)
        implements InputCourse.Input {

    @Override
    public void feed(Session session, Alarm alarm, PlainLines lines, Instant start) {
        Instant now = start;
        int utterances = 0;
        boolean kept = keepsAudio;
        for (AudioFiles.Playable recording : recordings) {
            AudioFileFeed feed = new AudioFileFeed(ear, recording.sound());
            while (!feed.ended() && !session.closed()) {
                Optional<Utterance> heard = feed.next(desk.grammar().vocabulary(session.expectation()));
                if (heard.isPresent()) {
                    utterances++;
                    Utterance utterance = heard.get();
                    Event.Heard event = new Event.Heard(
                            now.plusMillis(Math.round(utterance.endSeconds() * 1000)),
                            Event.Source.VOICE,
                            utterance.alternatives());
                    alarm.ring(session, event.at());
                    kept = complainOnce(session.on(event, stretch(recording.sound(), utterance)), kept);
                }
            }
            now = now.plus(Duration.ofMillis(Math.round(recording.sound().seconds() * 1000)));
        }
        if (utterances == 0) {
            console.complain("no speech was heard in "
                    + recordings.stream()
                            .map(recording -> "'" + recording.file() + "'")
                            .toList() + ": is it the right file, and loud enough?");
        }
    }

    private boolean complainOnce(Optional<String> trouble, boolean kept) {
        trouble.filter(why -> kept)
                .ifPresent(why -> console.complain("sound is not kept from here on (" + why + "); the words are."));
        return kept && trouble.isEmpty();
    }

    /** The sound of an utterance with a little before and after it. */
    private static Samples stretch(Samples sound, Utterance utterance) {
        int from = (int) Math.round(Math.max(0, utterance.startSeconds() - Utterance.MARGIN_SECONDS) * sound.rate());
        int to = (int) Math.round((utterance.endSeconds() + Utterance.MARGIN_SECONDS) * sound.rate());
        return Samples.of(sound.slice(from, Math.max(from, to)), sound.rate());
    }
}
