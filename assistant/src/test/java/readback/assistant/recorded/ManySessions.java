package readback.assistant.recorded;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Sums;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.About;
import readback.assistant.record.Forger;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Verification;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportPage;
import readback.assistant.session.Session;
import readback.grammar.Hypothesis;
import readback.prompts.text.Language;

/**
 * Measures listing many sessions and verifying a long one. {@code ManySessions FOLDER COUNT} makes the sessions it
 * lacks and lists them; {@code ManySessions FOLDER long EVENTS} records a long session and verifies it.
 */
public final class ManySessions {

    private static final int REPEATS = 5;
    private static final double MILLION = 1e6;

    private ManySessions() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        if (args[1].equals("long")) {
            verifyLong(folder, Integer.parseInt(args[2]));
        } else {
            list(folder, Integer.parseInt(args[1]));
        }
    }

    private static void list(Path folder, int count) throws IOException, RecordUnavailableException {
        make(folder, count);
        for (int i = 0; i < REPEATS; i++) {
            Sums sums = new Sums();
            AtomicInteger doubtful = new AtomicInteger();
            SessionFilter choice = SessionFilter.ALL.doubtful();
            long before = processor();
            long start = System.nanoTime();
            Archive.Listing listing = Archive.in(folder).each(summary -> {
                sums.add(summary);
                if (choice.takes(summary)) {
                    doubtful.incrementAndGet();
                }
            });
            System.out.printf(
                    "listing %d: %.0f ms (%.0f ms of processor), %d sessions, %d doubtful, %.1f kg added, heap %d MB%n",
                    i + 1,
                    (System.nanoTime() - start) / MILLION,
                    (processor() - before) / MILLION,
                    listing.sessions(),
                    doubtful.get(),
                    sums.byRefrigerant().values().stream()
                            .mapToDouble(Sums.Amount::addedKilograms)
                            .sum(),
                    usedMegabytes());
        }
    }

    /** Nanoseconds that this thread has had a processor: what the clock shows on a machine with nothing else to do. */
    private static long processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long usedMegabytes() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    /** Two recorded sessions again and again, each under a name of its own and with a chain that holds. */
    private static void make(Path folder, int count) throws IOException, RecordUnavailableException {
        Path pattern = Files.createTempDirectory("pattern");
        List<List<String>> kinds = List.of(
                Files.readAllLines(Scripted.charging("a")
                        .about(About.CYLINDER, "C-17")
                        .in(pattern)
                        .resolve(SessionRecord.FILE)),
                Files.readAllLines(Scripted.valve("b").in(pattern).resolve(SessionRecord.FILE)));
        for (int i = 0; i < count; i++) {
            String name = String.format("session-%07d", i);
            Path session = folder.resolve(name);
            if (!Files.exists(session)) {
                Files.createDirectory(session);
                Files.writeString(
                        session.resolve(SessionRecord.FILE),
                        Forger.chained(kinds.get(i % kinds.size()), (line, node) -> {
                            if (line == 1) {
                                node.put("session", name);
                            }
                        }));
            }
        }
    }

    private static void verifyLong(Path folder, int events) throws Exception {
        Random random = new Random(1);
        Header header = new Header("long", Scripted.START, "test", Scripted.parts());
        Path session = folder.resolve("long");
        if (!Files.exists(session)) {
            try (SessionRecord record = SessionRecord.create(folder, header)) {
                Session open = Session.open(
                        Scripted.dialogue(),
                        Scripted.wording(),
                        record,
                        List.of(),
                        SessionSettings.STANDARD,
                        Scripted.START);
                List<String> setUp = List.of(
                        "four ten a",
                        "piston",
                        "understood",
                        "yes",
                        "yes",
                        "ninety five",
                        "return wet bulb sixty seven",
                        "suction line sixty two");
                for (int i = 1; i < events; i++) {
                    String words = i <= setUp.size()
                            ? setUp.get(i - 1)
                            : "suction pressure one " + digit(random) + " " + digit(random);
                    open.on(new Event.Heard(
                            Scripted.START.plusSeconds(i), Event.Source.KEYS, List.of(Hypothesis.typed(words))));
                }
            }
        }
        for (int i = 0; i < REPEATS; i++) {
            long before = processor();
            long start = System.nanoTime();
            RecordedSession read = RecordedSession.read(session);
            long replayed = System.nanoTime();
            Verification verification =
                    Verification.of(Scripted.dialogue(), Scripted.wording(), Scripted.parts(), read);
            long end = System.nanoTime();
            System.out.printf(
                    "%d events: read and chain %.0f ms, replay and comparison %.0f ms, both %.0f ms of processor,"
                            + " identical %b%n",
                    verification.events(),
                    (replayed - start) / MILLION,
                    (end - replayed) / MILLION,
                    (processor() - before) / MILLION,
                    verification.identical());
        }
        RecordedSession call = Scripted.charging("report-" + System.nanoTime()).readFrom(folder);
        for (int i = 0; i < REPEATS; i++) {
            long start = System.nanoTime();
            JobReport report =
                    JobReport.of(Scripted.dialogue(), Scripted.wording(), Scripted.parts(), call, RemarkFile.on(call));
            int bytes =
                    ReportPage.of(report, Language.english(), Scripted.START).getBytes(StandardCharsets.UTF_8).length;
            System.out.printf(
                    "report of %d events: %.0f ms, %d kB%n",
                    call.entries().size(), (System.nanoTime() - start) / MILLION, bytes / 1000);
        }
    }

    private static String digit(Random random) {
        return List.of("one", "two", "three").get(random.nextInt(3));
    }
}
