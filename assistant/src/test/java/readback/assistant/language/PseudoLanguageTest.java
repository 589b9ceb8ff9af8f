package readback.assistant.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Sums;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.GoldenEvents;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Header;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Playback;
import readback.assistant.report.CommissioningPage;
import readback.assistant.report.IndexPage;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportPage;
import readback.assistant.report.SheetPage;
import readback.assistant.screen.Board;
import readback.assistant.screen.Drawn;
import readback.assistant.screen.View;
import readback.assistant.session.Audience;
import readback.assistant.session.Build;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Line;
import readback.assistant.session.Session;
import readback.calc.fluid.Catalogue;
import readback.calc.quantity.Unit;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Meaning;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

/** Whole calls in a language that nobody speaks: nothing is said, shown or written that did not come from it. */
class PseudoLanguageTest {

    private static final Path FOLDER = Path.of("src/test/resources/readback/assistant/golden");
    private static final Language LANGUAGE = PseudoLanguage.language();
    private static final Checklists CHECKLISTS = Checklists.standard();
    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Dialogue DIALOGUE = new Dialogue(GRAMMAR, CHECKLISTS);
    private static final View.Status STATUS = new View.Status("", true, true, 4, 0, "");

    private static final Pattern LATIN = Pattern.compile("[A-Za-z]{2,}");

    /** Digits and letters of hashes. */
    private static final Pattern HASH = Pattern.compile("\\b[0-9a-f]{16,64}\\b");

    /**
     * Letters of SI and of universal time, the safety class and the session's own name; keys as keyboards have them.
     */
    private static final Set<String> SYMBOLS =
            Set.of("psi", "bar", "Pa", "oz", "lb", "kg", "kJ", "min", "UTC", "golden", "test");

    static Stream<Path> conversations() throws IOException {
        return GoldenEvents.files();
    }

    /** One of each job; all the others are the slow test. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "piston-add",
                "valve-in-tolerance",
                "airflow-too-little",
                "standing-pressure",
                "evacuation-tight",
                "weigh-in-by-scale",
                "doubts"
            })
    void a_call_holds_no_word_of_english(String conversation, @TempDir Path sessions) throws Exception {
        assertThat(english(LANGUAGE, FOLDER.resolve(conversation + ".txt"), sessions))
                .isEmpty();
    }

    @Test
    void the_same_call_in_english_is_found_out_everywhere(@TempDir Path sessions) throws Exception {
        Set<String> found = english(Language.english(), FOLDER.resolve("piston-add.txt"), sessions);

        assertThat(found)
                .extracting(each -> each.substring(0, each.indexOf(':')))
                .contains("said", "shown", "screen", "report", "list", "replay");
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("conversations")
    void no_reviewed_conversation_holds_a_word_of_english(Path file, @TempDir Path sessions) throws Exception {
        assertThat(english(LANGUAGE, file, sessions)).isEmpty();
    }

    /** Everything said, shown and written of a call that is not of the language, with where it was met. */
    private static Set<String> english(Language language, Path file, Path sessions) throws Exception {
        List<Event> events =
                GoldenEvents.of(file).stream().map(PseudoLanguageTest::marked).toList();
        Event.Started started = (Event.Started) events.get(0);
        Map<String, String> parts = Fingerprints.of(CHECKLISTS);
        Set<String> found = new TreeSet<>();
        Board board =
                new Board(GRAMMAR, CHECKLISTS, language, started.settings().units());
        Heeder heeder = new Heeder();
        Path folder;
        try (SessionRecord record =
                SessionRecord.create(sessions, new Header("golden", started.at(), "test", parts, Map.of()))) {
            Session session = Session.open(
                    DIALOGUE, language.wording(), record, List.of(board, heeder), started.settings(), started.at());
            see(language, board, session, heeder, found);
            for (Event event : events.subList(1, events.size())) {
                session.on(event);
                see(language, board, session, heeder, found);
            }
            folder = record.folder();
        }
        RecordedSession recorded = RecordedSession.read(folder);
        JobReport report = JobReport.of(DIALOGUE, language.wording(), parts, recorded, RemarkFile.on(recorded));
        String build = Build.ofThisProgram().name();
        look("report", text(ReportPage.of(report, language, Instant.EPOCH)).replace(build, ""), heeder.quoted, found);
        look("sheet", text(SheetPage.of(report, language, Instant.EPOCH)), heeder.quoted, found);
        look(
                "commissioning",
                text(CommissioningPage.of(report, Optional.empty(), language, Instant.EPOCH)),
                heeder.quoted,
                found);
        look("list", text(list(language, Summary.of(recorded))), heeder.quoted, found);
        look("replay", replay(language, recorded), heeder.quoted, found);
        return found;
    }

    private static void see(Language language, Board board, Session session, Heeder heeder, Set<String> found) {
        heeder.lines.forEach(line -> {
            look("said", line.spoken(), heeder.quoted, found);
            look("shown", line.shown(), heeder.quoted, found);
        });
        View view = board.view(session, STATUS, List.of(), "");
        for (int columns : List.of(80, 150)) {
            look("screen", String.join("\n", Drawn.lines(language, view, columns, 45)), heeder.quoted, found);
        }
    }

    private static String list(Language language, Summary summary) {
        IndexPage page = new IndexPage(language, 10, session -> Optional.empty());
        page.add(summary);
        Sums sums = new Sums();
        sums.add(summary);
        SessionFilter choice = SessionFilter.ALL.doubtful().verdict("add").caution("high-pressure");
        return page.page(choice, sums, new Archive.Listing(1, List.of()), Instant.EPOCH);
    }

    private static String replay(Language language, RecordedSession recorded) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new Playback(new PrintStream(bytes, true, StandardCharsets.UTF_8), language, new Playback.Viewer() {})
                .play(recorded, Playback.Next.ENTRY);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** The text of a page. */
    private static String text(String page) {
        return page.replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("&[a-z]+;", " ");
    }

    /** What was typed is told from what was written here by its changing case: "sUcTiOn". */
    private static Event marked(Event event) {
        if (!(event instanceof Event.Heard heard)) {
            return event;
        }
        List<Hypothesis> words = heard.hypotheses().stream()
                .map(each -> new Hypothesis(changing(each.words()), each.confidence(), each.details()))
                .toList();
        return new Event.Heard(heard.at(), heard.source(), words);
    }

    private static String changing(String words) {
        StringBuilder out = new StringBuilder();
        boolean upper = false;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            out.append(upper ? Character.toUpperCase(c) : Character.toLowerCase(c));
            upper = Character.isLetter(c) && !upper;
        }
        return out.toString();
    }

    private static boolean isChanging(String word) {
        for (int i = 1; i < word.length(); i++) {
            if (Character.isUpperCase(word.charAt(i)) == Character.isUpperCase(word.charAt(i - 1))) {
                return false;
            }
        }
        return true;
    }

    private static void look(String where, String text, Set<String> quoted, Set<String> found) {
        Set<String> allowed = new HashSet<>(SYMBOLS);
        for (Unit unit : Unit.values()) {
            allowed.addAll(List.of(unit.symbol().split("[^A-Za-z]+", -1)));
        }
        allowed.addAll(quoted);
        String rest = HASH.matcher(text).replaceAll(" ");
        for (String designation : Catalogue.standard().spokenNames().keySet()) {
            rest = rest.replace(designation, " ");
        }
        Matcher latin = LATIN.matcher(rest);
        while (latin.find()) {
            if (!allowed.contains(latin.group()) && !isChanging(latin.group())) {
                int from = Math.max(0, latin.start() - 20);
                found.add(where + ": " + latin.group() + " in "
                        + rest.substring(from, Math.min(rest.length(), latin.end() + 20))
                                .replace('\n', ' '));
            }
        }
    }

    /** Keeps what was said, and the words of the technician that are quoted in lower case. */
    private static final class Heeder implements Audience {
        private final Set<String> quoted = new HashSet<>();
        private List<Line> lines = List.of();

        @Override
        public void happened(Event event, Turn turn) {
            lines = List.of();
            turn.outcome().understood().meaning().ifPresent(meaning -> {
                if (meaning instanceof Meaning.Note note) {
                    quote(note.words());
                } else if (meaning instanceof Meaning.NotUnderstood not) {
                    not.why().words().forEach(this::quote);
                }
            });
        }

        private void quote(String words) {
            quoted.addAll(List.of(words.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)));
        }

        @Override
        public void says(List<Line> said) {
            lines = said;
        }
    }
}
