package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import readback.assistant.archive.UnderstoodCautions;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.About;
import readback.assistant.record.FolderLedger;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Verification;
import readback.assistant.session.Audience;
import readback.assistant.session.Build;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;

/**
 * Runs one session, live, typed or recorded, new or resumed: opens its record, lets it take its course, and tells where
 * the record lies.
 */
final class SessionLauncher {

    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Desk desk;
    private final Console console;
    private final SteadyClock clock;

    SessionLauncher(Desk desk, Console console, SteadyClock clock) {
        this.desk = desk;
        this.console = console;
        this.clock = clock;
    }

    /**
     * What is fixed before a session runs.
     *
     * @param settings of a new session; a resumed one keeps its own
     * @param ear name of what listens, for the record
     * @param voice name of what speaks, for the record
     * @param resumption a session to go on with, in place of a new one
     * @param json whether the result is told as JSON in the end
     */
    record Plan(
            SessionSettings settings,
            Path sessions,
            SessionOptions.Keeping keeping,
            Optional<String> ear,
            Optional<String> voice,
            Optional<SessionRecord.Resumption> resumption,
            boolean json) {}

    /** Where a session's events come from and who follows it. */
    interface Course {
        /** Opens the session and feeds it until it is closed or there is no more. */
        Session run(Opening opening);

        /** Lines for the user once it is over. */
        List<String> summary(Session session);
    }

    /**
     * A session that is ready to be opened.
     *
     * @param with opens it with the audiences that it is given
     */
    record Opening(SessionRecord record, Instant start, Function<List<Audience>, Session> with) {}

    /**
     * Runs the session to its end; its record is complete when this returns.
     *
     * @param out gets the last lines
     */
    void launch(Plan plan, Course course, Consumer<String> out) {
        plan.resumption().ifPresent(old -> clock.goOnAs(Session.clockChanges(old.session())));
        Instant start = clock.instant();
        try (SessionRecord record = record(plan, start)) {
            record.keepAudio(plan.keeping().audio());
            if (plan.resumption().isEmpty()) {
                anchor(record, start);
            }
            Session session = course.run(new Opening(
                    record,
                    start,
                    audiences -> plan.resumption()
                            .map(old -> Session.resume(desk.dialogue(), desk.wording(), old, audiences, start))
                            .orElseGet(() -> Session.open(
                                    desk.dialogue(),
                                    desk.wording(),
                                    record,
                                    audiences,
                                    settings(plan, start),
                                    start))));
            settled(record).ifPresent(out);
            anchor(record, clock.instant());
            if (!plan.keeping().about().containsKey(About.PRACTICE)) {
                leftOpen(session, record).ifPresent(out);
            }
            course.summary(session).forEach(out);
            if (plan.json()) {
                out.accept(Result.json(session.state(), session.closed()));
            }
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** The settings with what the day's records tell; a session that goes on keeps those it began with. */
    private SessionSettings settings(Plan plan, Instant start) {
        UnderstoodCautions today = UnderstoodCautions.in(plan.sessions(), ZoneId.systemDefault(), desk.checklists());
        return plan.settings().having(today.before(plan.settings(), start));
    }

    private SessionRecord record(Plan plan, Instant start) throws RecordUnavailableException {
        return plan.resumption().isPresent()
                ? plan.resumption().get().record()
                : SessionRecord.create(plan.sessions(), header(plan, start));
    }

    private Header header(Plan plan, Instant start) {
        Map<String, String> parts = new TreeMap<>(Fingerprints.of(desk.checklists()));
        plan.ear().ifPresent(name -> parts.put("ear", name));
        plan.voice().ifPresent(name -> parts.put("voice", name));
        String session = NAME.format(start) + String.format("-%04x", new SecureRandom().nextInt(0x10000));
        return new Header(
                        session,
                        start,
                        Build.ofThisProgram().name(),
                        parts,
                        plan.keeping().about())
                .in(ZoneId.systemDefault());
    }

    /** A session that was left without an end, if this version would come to the same answers. */
    SessionRecord.Resumption reopened(Path session) {
        try {
            SessionRecord.Resumption resumption = SessionRecord.resume(session);
            if (resumption.session().header().about().containsKey(About.PRACTICE)) {
                resumption.record().close();
                throw new CommandFailure("That session was practice, and its unit is gone: begin it anew with readback"
                        + " practice --scenario "
                        + resumption.session().header().about().get(About.PRACTICE) + ".");
            }
            Verification verification = Verification.of(
                    desk.dialogue(), desk.wording(), Fingerprints.of(desk.checklists()), resumption.session());
            verification.difference().ifPresent(found -> {
                resumption.record().close();
                throw new CommandFailure("This version understands the session differently (" + found
                        + "): go on with the version that began it, " + verification.madeWith()
                        + ", or begin a new session.");
            });
            resumption
                    .dropped()
                    .ifPresent(fault -> console.complain(fault + "; it was never acknowledged and is dropped."));
            return resumption;
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** Where the record of a session that is over lies, for the user; empty when the disk did not take all of it. */
    private Optional<String> settled(SessionRecord record) {
        rescue(record);
        return record.waiting() == 0
                ? Optional.of("Record: " + record.folder().resolve(SessionRecord.FILE))
                : Optional.empty();
    }

    /**
     * How to go on with a session that ended without the order to finish; empty when it was closed, or when its record
     * is not where it could be opened.
     */
    private static Optional<String> leftOpen(Session session, SessionRecord record) {
        return session.closed() || record.waiting() > 0
                ? Optional.empty()
                : Optional.of("It was left open. To go on: readback check --resume " + record.folder());
    }

    /** Keeps in the folder's ledger what the record is now, so that a later cut is noticed. */
    private void anchor(SessionRecord record, Instant now) {
        Path sessions = record.folder().getParent();
        if (sessions == null || record.waiting() > 0) {
            return;
        }
        FolderLedger.in(sessions)
                .note(now, record.anchor())
                .ifPresent(why -> console.complain("the ledger of '" + sessions + "' was not written (" + why
                        + "): if this record is cut later, nobody will notice."));
    }

    /** Where lines that lie elsewhere belong. */
    private static String place(SessionRecord record) {
        Path file = record.folder().resolve(SessionRecord.FILE);
        if (!Files.exists(file)) {
            return "copy that file to '" + file + "'";
        }
        return "put them behind "
                + (record.torn().isPresent() ? "the first " + record.torn().getAsLong() + " bytes of " : "")
                + "the record '" + file + "'";
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
            console.complain("the disk did not take the last " + record.waiting()
                    + " lines of the record; they are in '"
                    + elsewhere + "': " + place(record) + " when it can be written.");
        } catch (IOException e) {
            console.complain("the last " + record.waiting() + " lines of the record could not be written anywhere ("
                    + e.getMessage() + "); what was said is on this screen only.");
        }
    }
}
