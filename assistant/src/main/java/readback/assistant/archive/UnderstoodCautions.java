package readback.assistant.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.replay.ByNumber;
import readback.calc.caution.CautionRule;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;

/**
 * Which cautions were understood earlier the same day by the same technician at the same site, from the records of a
 * folder of sessions. Where anything is in doubt, a record that cannot be read or does not hold, none were.
 */
public final class UnderstoodCautions {

    private final Path sessions;
    private final ZoneId zone;
    private final Set<Slot> preparing;

    private UnderstoodCautions(Path sessions, ZoneId zone, Set<Slot> preparing) {
        this.sessions = sessions;
        this.zone = zone;
        this.preparing = preparing;
    }

    /**
     * Those in a folder of sessions.
     *
     * @param zone whose midnight ends a day
     * @param checklists whose steps ask whether cautions were understood
     */
    public static UnderstoodCautions in(Path sessions, ZoneId zone, Checklists checklists) {
        return new UnderstoodCautions(
                sessions,
                zone,
                checklists.all().stream()
                        .flatMap(list -> list.steps().stream())
                        .filter(step -> step.task().prepared().isPresent())
                        .map(Step::slot)
                        .collect(Collectors.toSet()));
    }

    /**
     * The cautions that need not be read out again in a session that begins now; none where no site, or several, are
     * named.
     */
    public Set<CautionRule> before(SessionSettings settings, Instant now) {
        Set<CautionRule> understood = EnumSet.noneOf(CautionRule.class);
        boolean unknownWhoOrWhere = settings.site().isEmpty()
                || Stream.concat(settings.site().stream(), settings.technician().stream())
                        .anyMatch(ByNumber::several);
        if (unknownWhoOrWhere) {
            return understood;
        }
        LocalDate today = now.atZone(zone).toLocalDate();
        LocalDate first =
                today.atStartOfDay(zone).withZoneSameInstant(ZoneOffset.UTC).toLocalDate();
        LocalDate last = now.atZone(ZoneOffset.UTC).toLocalDate();
        // folders are named by the moment of their start, so that only a day's records are read
        try {
            for (Path folder : Archive.in(sessions).folders()) {
                String name = String.valueOf(folder.getFileName());
                if (first.datesUntil(last.plusDays(1)).anyMatch(day -> name.startsWith(day.toString()))) {
                    understood.addAll(in(folder, settings, today, now));
                }
            }
        } catch (IOException nothingThere) {
            return understood;
        }
        return understood;
    }

    private Set<CautionRule> in(Path folder, SessionSettings settings, LocalDate today, Instant now) {
        try {
            RecordedSession session = RecordedSession.read(folder);
            Instant start = session.header().startedAt();
            boolean counts = session.fault().isEmpty()
                    && !session.header().about().containsKey(About.PRACTICE)
                    && start.isBefore(now)
                    && start.atZone(zone).toLocalDate().equals(today)
                    && session.settings()
                            .filter(theirs -> theirs.site().equals(settings.site())
                                    && theirs.technician().equals(settings.technician()))
                            .isPresent()
                    && session.entries().stream().noneMatch(UnderstoodCautions::tellsWhoOrWhere);
            return counts ? understood(session) : Set.of();
        } catch (RecordUnavailableException unreadable) {
            return Set.of();
        }
    }

    /** Another technician, or another site, than the settings name. */
    private static boolean tellsWhoOrWhere(Entry entry) {
        return entry.outcome().change(Slots.TECHNICIAN_NUMBER).isPresent()
                || entry.outcome().change(Slots.SITE_NUMBER).isPresent();
    }

    /** What was given and then said to be understood. */
    private Set<CautionRule> understood(RecordedSession session) {
        Set<CautionRule> given = EnumSet.noneOf(CautionRule.class);
        Set<CautionRule> understood = EnumSet.noneOf(CautionRule.class);
        for (Entry entry : session.entries()) {
            boolean done = entry.outcome().changes().stream()
                    .filter(change -> preparing.contains(change.slot()))
                    .anyMatch(change ->
                            change.after().filter(Content.Option.DONE::equals).isPresent());
            if (done) {
                understood.addAll(given);
            }
            given.addAll(entry.outcome().cautions());
        }
        return understood;
    }
}
