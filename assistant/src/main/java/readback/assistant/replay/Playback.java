package readback.assistant.replay;

import java.io.PrintStream;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.assistant.language.Names;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.prompts.text.Language;

/** A recorded conversation as plain lines, with its times and pauses. One thread. */
public final class Playback {

    private static final Duration WORTH_TELLING = Duration.ofSeconds(10);
    private static final int SECONDS_IN_MINUTE = 60;

    private final PrintStream out;
    private final Language language;
    private final Names names;
    private final Viewer viewer;

    /** The viewer, who decides how fast it goes and where it goes on. */
    public interface Viewer {

        /** Lets the pause before an entry pass. */
        default void pause(Duration pause) {}

        /** Where to go on after an entry. */
        default Next after(Entry entry) {
            return Next.ENTRY;
        }

        /** An entry was shown. */
        default void shown(Entry entry) {}
    }

    /**
     * Where to go on.
     *
     * @param moment the next entry of this kind; empty for the very next entry
     * @param stop whether the viewer has seen enough
     */
    public record Next(Optional<Moment> moment, boolean stop) {

        /** The very next entry. */
        public static final Next ENTRY = new Next(Optional.empty(), false);

        /** Nothing more. */
        public static final Next STOP = new Next(Optional.empty(), true);

        /** The next entry of a kind; what lies between is passed over. */
        public static Next to(Moment moment) {
            return new Next(Optional.of(moment), false);
        }
    }

    public Playback(PrintStream out, Language language, Viewer viewer) {
        this.out = out;
        this.language = language;
        this.names = new Names(language);
        this.viewer = viewer;
    }

    /**
     * Shows a session.
     *
     * @param first where to begin
     * @return how many entries were shown
     */
    public int play(RecordedSession session, Next first) {
        List<Entry> entries = session.entries();
        out.println(language.label(
                "report.replay.session",
                Visible.text(session.header().session()),
                language.moment(session.header().startedAt(), session.header().shownIn())));
        int shown = 0;
        int at = find(entries, 0, first);
        int last = -1;
        while (at < entries.size()) {
            Entry entry = entries.get(at);
            if (last >= 0) {
                skipOrWait(entries, last, at);
            }
            show(session, entries, at);
            viewer.shown(entry);
            shown++;
            Next next = viewer.after(entry);
            last = at;
            at = next.stop() ? entries.size() : find(entries, at + 1, next);
        }
        return shown;
    }

    private static int find(List<Entry> entries, int from, Next next) {
        int at = from;
        while (at < entries.size() && !wanted(entries, at, next)) {
            at++;
        }
        return at;
    }

    private static boolean wanted(List<Entry> entries, int at, Next next) {
        return next.moment()
                .map(moment -> moment.in(entries.get(at), before(entries, at)))
                .orElse(true);
    }

    private static Optional<Entry> before(List<Entry> entries, int at) {
        return at == 0 ? Optional.empty() : Optional.of(entries.get(at - 1));
    }

    private void skipOrWait(List<Entry> entries, int last, int at) {
        if (at > last + 1) {
            out.println("        ... " + language.label("report.replay.passed-over", at - last - 1));
            return;
        }
        Duration pause = Duration.between(
                entries.get(last).event().at(), entries.get(at).event().at());
        if (pause.compareTo(WORTH_TELLING) >= 0) {
            out.println("        ... " + language.label("report.replay.later", clock(pause)));
        }
        viewer.pause(pause);
    }

    private void show(RecordedSession session, List<Entry> entries, int at) {
        Entry entry = entries.get(at);
        String time = clock(
                Duration.between(session.header().startedAt(), entry.event().at()));
        heard(entry).ifPresent(words -> out.println(time + "  " + language.margin("screen.plain.technician") + words));
        String margin = heard(entry).isPresent() ? " ".repeat(time.length()) : time;
        for (String line : entry.said()) {
            out.println(margin + "  " + language.margin("screen.plain.readback") + Visible.text(line));
            margin = " ".repeat(time.length());
        }
        marks(entries, at).forEach(mark -> out.println(" ".repeat(time.length()) + "  * " + Visible.text(mark)));
        out.flush();
    }

    private Optional<String> heard(Entry entry) {
        if (!(entry.event() instanceof Event.Heard heard)) {
            return Optional.empty();
        }
        return Optional.of(
                heard.hypotheses().isEmpty()
                        ? language.label("report.replay.no-words")
                        : Visible.text(heard.hypotheses().get(0).words()));
    }

    private List<String> marks(List<Entry> entries, int at) {
        Entry entry = entries.get(at);
        List<String> marks = new java.util.ArrayList<>();
        if (Moment.DOUBT.in(entry, before(entries, at))) {
            marks.add(language.label(
                    "report.replay.doubt", names.understood(entry.outcome().understood())));
        }
        if (Moment.CAUTION.in(entry, before(entries, at))) {
            marks.add(language.label(
                    "report.replay.caution",
                    String.join(
                            ", ",
                            entry.outcome().cautions().stream()
                                    .map(rule -> names.constant("caution", rule))
                                    .toList())));
        }
        if (Moment.VERDICT.in(entry, before(entries, at))) {
            marks.add(language.label(
                    "report.replay.verdict",
                    String.join(
                            "; ",
                            entry.outcome().standing().stream()
                                    .map(outcome -> names.outcome(outcome.name()))
                                    .toList())));
        }
        return marks;
    }

    /** Minutes and seconds, as in "07:31". */
    static String clock(Duration duration) {
        long seconds = Math.max(0, duration.toSeconds());
        return String.format(Locale.ROOT, "%02d:%02d", seconds / SECONDS_IN_MINUTE, seconds % SECONDS_IN_MINUTE);
    }
}
