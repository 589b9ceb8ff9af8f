package readback.assistant.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.dialogue.Event;
import readback.assistant.record.Entry;
import readback.assistant.record.Oddities;
import readback.assistant.record.RecordFault;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RecordedSession.KeptSound;
import readback.assistant.record.RemarkFile;
import readback.assistant.replay.Moment;
import readback.assistant.replay.Playback;
import readback.assistant.replay.Replay;
import readback.assistant.replay.Verification;
import readback.assistant.replay.VerificationSentences;
import readback.assistant.replay.Visible;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Line;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.calc.name.ConstantName;
import readback.grammar.Hypothesis;
import readback.prompts.text.Language;

/** Shows a recorded conversation again, or checks it. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description = {
            "Shows a recorded session as it unfolded, with its times, doubts, cautions and verdicts.",
            "With --verify: checks that the record was not altered and that its events lead to the same readings,"
                    + " verdicts and cautions again."
        },
        footer = {
            "",
            "With --step: Enter shows the next event; d, c or v and Enter jump to the next doubt, caution or verdict;"
                    + " q ends."
        })
public final class ReplayCommand implements Callable<Integer> {

    private static final double LONGEST_PAUSE_SECONDS = 3;
    private static final double MILLIS = 1000;

    private final Console console;

    @Parameters(paramLabel = "SESSION", description = "Folder of the session, or its session.jsonl.")
    private Path session = Path.of(".");

    @Option(names = "--verify", description = "Check instead of showing. Exit code 1 when something differs.")
    private boolean verify;

    @Option(
            names = "--hash",
            paramLabel = "HASH",
            description = "With --verify: the hash that a report or remark names; the record must still hold it.")
    private @Nullable String hash;

    @Option(
            names = "--speed",
            paramLabel = "FACTOR",
            description = "Let the pauses pass, this much faster than they were: 1 as it was, 10 ten times as fast.")
    private @Nullable String speed;

    @Option(names = "--step", description = "Wait for a key after each event.")
    private boolean step;

    @Option(names = "--only", paramLabel = "doubt|caution|verdict", description = "Show only these moments.")
    private @Nullable String only;

    @Option(
            names = "--aloud",
            description =
                    "Let both sides be heard: the kept sound of what the technician said, their words by the voice"
                            + " where none was kept, and the answers. On the loudspeaker, or with --speak-to into that file"
                            + " alone.")
    private boolean aloud;

    @Mixin
    private LoudspeakerOption loudspeaker = new LoudspeakerOption();

    @Mixin
    private VoiceOptions voice = new VoiceOptions();

    public ReplayCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (hash != null && !verify) {
            throw new CommandFailure("--hash belongs to --verify.");
        }
        RecordedSession recorded = SessionFiles.readWithEvents(session);
        return verify ? verified(recorded) : shown(recorded);
    }

    private int verified(RecordedSession recorded) {
        Desk desk = Desk.standard();
        Verification verification =
                Verification.of(desk.dialogue(), desk.wording(), Fingerprints.of(desk.checklists()), recorded);
        new VerificationSentences(desk.language()).sentences(verification).forEach(console.out()::println);
        boolean soundHolds = soundHolds(recorded);
        boolean nothingOdd = nothingOdd();
        boolean remarksHold = remarksHold(recorded);
        console.out().println("Hash of the record: " + recorded.hash());
        boolean hashHolds = hash == null || holdsHash(recorded, hash);
        if (!recorded.closed()) {
            console.out().println(desk.language().label("report.trouble.open"));
        }
        return verification.identical() && soundHolds && hashHolds && nothingOdd && remarksHold ? 0 : 1;
    }

    private boolean holdsHash(RecordedSession recorded, String wanted) {
        Optional<Integer> events = recorded.eventsAt(wanted.strip().toLowerCase(Locale.ROOT));
        console.out()
                .println(events.map(count -> "It holds that hash, from after event " + count + " of "
                                + recorded.entries().size() + ".")
                        .orElse("It does not hold that hash: it was cut or rewritten since, or is another session."));
        return events.isPresent();
    }

    /** Whether every line that holds is one that a version writes; tells of those that are not. */
    private boolean nothingOdd() {
        List<RecordFault> odd = Oddities.in(session);
        odd.forEach(each -> console.out().println(Visible.text("Odd: " + each + ".")));
        return odd.isEmpty();
    }

    /** Whether the remarks are chained and those that the folder's ledger knows; tells of their number. */
    private boolean remarksHold(RecordedSession recorded) {
        try {
            RemarkFile remarks = RemarkFile.on(recorded);
            Optional<RemarkFile.Missed> missed = RemarkFile.missed(recorded);
            remarks.fault()
                    .ifPresent(fault -> console.out().println(Visible.text("The remarks do not hold: " + fault + ".")));
            missed.ifPresent(each -> console.out()
                    .println("The remarks are " + ConstantName.of(each.finding()) + ": there were " + each.remarks()
                            + "."));
            boolean hold = remarks.fault().isEmpty() && missed.isEmpty();
            if (hold && !remarks.all().isEmpty()) {
                console.out().println("The remarks hold: " + remarks.all().size() + ".");
            }
            return hold;
        } catch (RecordUnavailableException | IOException e) {
            console.out().println(Visible.text(String.valueOf(e.getMessage())));
            return false;
        }
    }

    private boolean soundHolds(RecordedSession recorded) {
        boolean holds = true;
        for (Entry entry : recorded.entries()) {
            holds &= recorded.sound(entry)
                    .map(sound -> sound.fold(holding(entry.number())))
                    .orElse(true);
        }
        return holds;
    }

    /** Whether a sound is as the record says, or was taken away; tells of what is not there. */
    private KeptSound.Cases<Boolean> holding(int event) {
        return new KeptSound.Cases<>() {
            @Override
            public Boolean whole(KeptSound.Whole whole) {
                return true;
            }

            @Override
            public Boolean missing(KeptSound.Missing missing) {
                console.out().println("The sound of event " + event + " was kept, but is gone now.");
                return true;
            }

            @Override
            public Boolean changed(KeptSound.Changed changed) {
                console.out().println("The sound of event " + event + " is not what was recorded.");
                return false;
            }
        };
    }

    private int shown(RecordedSession recorded) {
        Playback.Next next = only == null
                ? Playback.Next.ENTRY
                : Playback.Next.to(Moment.named(only)
                        .orElseThrow(
                                () -> new CommandFailure("--only is doubt, caution or verdict, not '" + only + "'.")));
        double factor = factor();
        List<Teller> tellers = tellers();
        try {
            List<String> spoken = tellers.isEmpty() ? List.of() : spoken(recorded);
            int count = new Playback(
                            console.out(), Language.english(), new Watcher(recorded, next, factor, tellers, spoken))
                    .play(recorded, next);
            if (count == 0) {
                console.out().println("There is no such moment in this session.");
            }
            tellers.forEach(each -> console.out().println(each.summary()));
        } finally {
            tellers.forEach(Teller::close);
        }
        recorded.fault().ifPresent(fault -> console.complain("from here on the record cannot be trusted: " + fault));
        return 0;
    }

    private List<Teller> tellers() {
        List<Teller> tellers = new ArrayList<>();
        voice.open(console).ifPresent(tellers::add);
        if (aloud && tellers.isEmpty()) {
            tellers.add(new LoudTeller(voice.live(), loudspeaker.loudspeaker(), speed == null));
        }
        return tellers;
    }

    private double factor() {
        if (speed == null) {
            return Double.POSITIVE_INFINITY;
        }
        double factor = Numbers.decimal("--speed", speed).doubleValue();
        if (factor <= 0) {
            throw new CommandFailure("--speed is a number above 0, not '" + speed + "'.");
        }
        return factor;
    }

    /** What is spoken after each event, in order. */
    private static List<String> spoken(RecordedSession recorded) {
        Desk desk = Desk.standard();
        List<String> texts = new ArrayList<>();
        Replay.through(
                desk.dialogue(),
                recorded.entries(),
                scene -> texts.add(Line.of(scene.turn(), desk.wording()).stream()
                        .map(Line::spoken)
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(" "))));
        return texts;
    }

    /** What was heard, as it was written down; empty where nothing was. */
    private static Optional<String> words(Entry entry) {
        return entry.event() instanceof Event.Heard heard
                ? heard.hypotheses().stream().findFirst().map(Hypothesis::words).filter(words -> !words.isBlank())
                : Optional.empty();
    }

    /** Follows the options while a session is shown. */
    private final class Watcher implements Playback.Viewer {
        private final RecordedSession recorded;
        private final Playback.Next next;
        private final double factor;
        private final List<Teller> tellers;
        private final List<String> spoken;
        private double silence;

        Watcher(
                RecordedSession recorded,
                Playback.Next next,
                double factor,
                List<Teller> tellers,
                List<String> spoken) {
            this.recorded = recorded;
            this.next = next;
            this.factor = factor;
            this.tellers = tellers;
            this.spoken = spoken;
        }

        @Override
        public void pause(Duration pause) {
            silence = Math.min(LONGEST_PAUSE_SECONDS, Math.max(0, pause.toMillis() / MILLIS));
            long millis = Math.round(Math.max(0, pause.toMillis()) / factor);
            if (millis > 0) {
                try {
                    Thread.sleep(millis);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            }
        }

        @Override
        public Playback.Next after(Entry entry) {
            return step ? asked() : next;
        }

        private Playback.Next asked() {
            try {
                String line = console.in().readLine();
                if (line == null) {
                    return Playback.Next.STOP;
                }
                return switch (line.strip().toLowerCase(Locale.ROOT)) {
                    case "" -> next;
                    case "d" -> Playback.Next.to(Moment.DOUBT);
                    case "c" -> Playback.Next.to(Moment.CAUTION);
                    case "v" -> Playback.Next.to(Moment.VERDICT);
                    case "q" -> Playback.Next.STOP;
                    default -> {
                        console.complain("Enter, d, c, v or q, not '" + line.strip() + "'.");
                        yield next;
                    }
                };
            } catch (IOException e) {
                throw new UncheckedIOException("standard input could not be read", e);
            }
        }

        @Override
        public void shown(Entry entry) {
            if (tellers.isEmpty()) {
                return;
            }
            Samples sound = recorded.sound(entry)
                    .filter(KeptSound.Whole.class::isInstance)
                    .flatMap(kept ->
                            Recording.read(((KeptSound.Whole) kept).file()).samples())
                    .orElse(Samples.silence(0, 16000));
            String text = spoken.get(entry.number() - 1);
            for (Teller teller : tellers) {
                teller.play(sound, silence);
                if (aloud && sound.length() == 0) {
                    words(entry).ifPresent(teller::speak);
                }
                if (!text.isEmpty()) {
                    teller.speak(text);
                }
            }
        }
    }
}
