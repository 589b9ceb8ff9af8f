package readback.assistant.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.State;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Verification;
import readback.assistant.session.Alarm;
import readback.assistant.session.Audience;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.PlainAudience;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.assistant.sound.Samples;
import readback.grammar.Hypothesis;
import readback.prompts.text.Language;

/** Runs one session from its input to its end. */
final class SessionRunner {

    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    /** An invented call that a typed session answers to itself before the first line; decision 0015. */
    private static final List<String> REHEARSED = List.of(
            "four ten a",
            "piston",
            "understood",
            "yes",
            "outdoor ninety five, wet bulb sixty seven",
            "suction one eighteen",
            "suction line fifty two",
            "correction, sixty two");

    private final Desk desk;
    private final Console console;
    private final SteadyClock clock;

    SessionRunner(Desk desk, Console console, SteadyClock clock) {
        this.desk = desk;
        this.console = console;
        this.clock = clock;
    }

    /** Where the events come from. */
    interface Input {
        /** Feeds the session until it is closed or there is no more. */
        void feed(Session session, Alarm alarm, Instant start);
    }

    /** One utterance a line from standard input. */
    Input typed() {
        return (session, alarm, start) -> {
            warmUp();
            try {
                String line = console.in().readLine();
                while (line != null && !session.closed()) {
                    clock.changed().ifPresent(by -> session.on(new Event.ClockChanged(clock.instant(), by)));
                    alarm.ring(session, clock.instant());
                    if (!line.isBlank()) {
                        session.on(new Event.Heard(
                                clock.instant(), Event.Source.KEYS, List.of(Hypothesis.typed(line.strip()))));
                    }
                    line = session.closed() ? null : console.in().readLine();
                }
            } catch (IOException e) {
                throw new UncheckedIOException("standard input could not be read", e);
            }
        };
    }

    /** The first answer would pay for loading everything that takes part; the dialogue is pure, so it can rehearse. */
    private void warmUp() {
        State state = desk.dialogue()
                .begin(new Event.Started(Instant.EPOCH, SessionSettings.STANDARD))
                .state();
        for (String words : REHEARSED) {
            Event.Heard heard = new Event.Heard(Instant.EPOCH, Event.Source.KEYS, List.of(Hypothesis.typed(words)));
            state = desk.dialogue().on(state, heard).state();
        }
    }

    /** Recordings, one after the other, heard with the vocabulary of the step that each utterance meets. */
    Input recorded(List<AudioFiles.Playable> recordings, Ear ear, boolean keepsAudio) {
        return (session, alarm, start) -> {
            Instant now = start;
            int utterances = 0;
            boolean kept = keepsAudio;
            for (AudioFiles.Playable recording : recordings) {
                AudioFileFeed feed = new AudioFileFeed(ear, recording.sound());
                while (!feed.ended() && !session.closed()) {
                    Optional<Utterance> heard = feed.next(
                            desk.grammar().vocabulary(session.expectation()).phrases());
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
        };
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

    /** What a run needs besides its input. */
    record Plan(
            SessionSettings settings,
            Path sessions,
            SessionOptions.Keeping keeping,
            Optional<VoiceOptions.Speaker> speaker,
            Optional<Ear> ear,
            boolean echo,
            boolean json) {

        boolean keepsAudio() {
            return keeping.audio().bytes() > 0;
        }
    }

    /** Runs a new session; the record is complete when this returns. */
    void run(Plan plan, Input input) {
        Instant start = clock.instant();
        try (SessionRecord record = SessionRecord.create(
                plan.sessions(),
                header(
                        plan.ear().map(Ear::name),
                        plan.speaker().map(VoiceOptions.Speaker::name),
                        plan.keeping(),
                        start))) {
            run(
                    plan,
                    input,
                    record,
                    start,
                    audiences ->
                            Session.open(desk.dialogue(), desk.wording(), record, audiences, plan.settings(), start));
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** Goes on with a session that was left without an end, in its own record and with its own settings. */
    void resume(Path session, Plan plan, Input input) {
        SessionRecord.Resumption resumption = reopened(session);
        clock.goOnAs(Session.clockChanges(resumption.session()));
        Instant start = clock.instant();
        try (SessionRecord record = resumption.record()) {
            run(
                    plan,
                    input,
                    record,
                    start,
                    audiences -> Session.resume(desk.dialogue(), desk.wording(), resumption, audiences, start));
        }
    }

    /** A session that was left without an end, if this version would come to the same answers. */
    SessionRecord.Resumption reopened(Path session) {
        try {
            SessionRecord.Resumption resumption = SessionRecord.resume(session);
            Verification verification = Verification.of(
                    desk.dialogue(), desk.wording(), Fingerprints.of(desk.checklists()), resumption.session());
            verification.difference().ifPresent(found -> {
                resumption.record().close();
                throw new CommandFailure("This version understands the session differently (" + found
                        + "): go on with the version that began it, or begin a new session.");
            });
            resumption
                    .dropped()
                    .ifPresent(fault -> console.complain(fault + "; it was never acknowledged and is dropped."));
            return resumption;
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    private void run(
            Plan plan, Input input, SessionRecord record, Instant start, Function<List<Audience>, Session> opening) {
        record.keepAudio(plan.keeping().audio());
        List<Audience> audiences = new ArrayList<>();
        Alarm alarm = new Alarm();
        audiences.add(alarm);
        audiences.add(new PlainAudience(console.out(), Language.english(), plan.echo()));
        plan.speaker().ifPresent(speaker -> audiences.add(speaker.audience()));
        if (record.waiting() > 0) {
            console.complain(notKept(record));
        }
        Session session = opening.apply(audiences);
        input.feed(session, alarm, start);
        settled(record).ifPresent(console.out()::println);
        leftOpen(session, record).ifPresent(console.out()::println);
        plan.speaker().ifPresent(speaker -> console.out().println(speaker.summary()));
        if (plan.json()) {
            console.out().println(Result.json(session.state(), session.closed()));
        }
    }

    /** Why a record has not begun on the disk yet, and what to do. */
    private static String notKept(SessionRecord record) {
        return "the record cannot be written to '" + record.folder() + "' ("
                + record.flush().orElse("it works again") + "): the session is in memory only until it can. Make that"
                + " folder writable, or begin again with another one named by --sessions.";
    }

    /** Where the record of a session that is over lies, for the user; empty when the disk did not take all of it. */
    Optional<String> settled(SessionRecord record) {
        rescue(record);
        return record.waiting() == 0
                ? Optional.of("Record: " + record.folder().resolve(SessionRecord.FILE))
                : Optional.empty();
    }

    /** How to go on with a session that ended without the order to finish; empty when it was closed. */
    static Optional<String> leftOpen(Session session, SessionRecord record) {
        return session.closed()
                ? Optional.empty()
                : Optional.of("It was left open. To go on: readback check --resume " + record.folder());
    }

    /** Lines that the disk did not take to the very end go where there may be room. */
    private void rescue(SessionRecord record) {
        if (record.waiting() == 0 || record.flush().isEmpty()) {
            return;
        }
        Path elsewhere = Path.of(System.getProperty("java.io.tmpdir", "."))
                .resolve(record.folder().getFileName() + "-rest.jsonl");
        try {
            record.rescue(elsewhere);
            console.complain(
                    "the disk did not take the last " + record.waiting() + " lines of the record; they are in '"
                            + elsewhere + "': put them behind the record '"
                            + record.folder().resolve(SessionRecord.FILE)
                            + "' when it can be written.");
        } catch (IOException e) {
            console.complain("the last " + record.waiting() + " lines of the record could not be written anywhere ("
                    + e.getMessage() + "); what was said is on this screen only.");
        }
    }

    /** The header of a session that starts now. */
    Header header(Optional<String> ear, Optional<String> voice, SessionOptions.Keeping keeping, Instant start) {
        Map<String, String> parts = new TreeMap<>(Fingerprints.of(desk.checklists()));
        ear.ifPresent(name -> parts.put("ear", name));
        voice.ifPresent(name -> parts.put("voice", name));
        String session = NAME.format(start) + String.format("-%04x", new SecureRandom().nextInt(0x10000));
        return new Header(session, start, Build.ofThisProgram().name(), parts, keeping.about());
    }
}
