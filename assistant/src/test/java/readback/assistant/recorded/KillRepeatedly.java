package readback.assistant.recorded;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordFault;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;

/**
 * Kills the real program (SIGKILL) at random moments of a typed session, checks that nothing it had answered is missing
 * in the record, and lets the next process resume where the last one stopped. {@code KillRepeatedly KILLS [START]}.
 */
public final class KillRepeatedly {

    private static final String SAID = "readback    ";
    private static final int RESUMES_PER_SESSION = 8;
    private static final int MOST_LINES_AWAITED = 120;
    private static final int MOST_MICROSECONDS = 4000;

    private final Path sessions;
    private final Random random;
    private int kills;
    private int resumed;
    private int torn;
    private int acknowledged;
    private int ended;

    /** What the kills came to. */
    public record Outcome(int kills, int resumed, int torn, int acknowledged, int ended) {}

    private KillRepeatedly(Path sessions, Random random) {
        this.sessions = sessions;
        this.random = random;
    }

    public static void main(String[] args) throws Exception {
        long start = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime();
        System.out.println("start number " + start);
        System.out.println(run(Files.createTempDirectory("kills"), Integer.parseInt(args[0]), start));
    }

    /**
     * Kills so many times.
     *
     * @throws AssertionError when something that was answered is not in the record, or a session cannot be resumed
     */
    public static Outcome run(Path sessions, int kills, long start) throws IOException, RecordUnavailableException {
        KillRepeatedly harness = new KillRepeatedly(sessions, new Random(start));
        try {
            harness.repeat(kills);
        } catch (AssertionError e) {
            throw new AssertionError("start number " + start + ", kill " + harness.kills + ": " + e.getMessage(), e);
        }
        return new Outcome(harness.kills, harness.resumed, harness.torn, harness.acknowledged, harness.ended);
    }

    private void repeat(int times) throws IOException, RecordUnavailableException {
        Optional<Path> session = Optional.empty();
        int resumes = 0;
        while (kills < times) {
            session = once(resumes < RESUMES_PER_SESSION ? session : Optional.empty());
            resumes = session.isPresent() && resumes < RESUMES_PER_SESSION ? resumes + 1 : 0;
        }
    }

    /** Starts or resumes a session, kills it, checks it; gives the session to resume. */
    private Optional<Path> once(Optional<Path> session) throws IOException, RecordUnavailableException {
        List<Path> known = folders();
        int before = session.isPresent()
                ? RecordedSession.read(session.get()).entries().size()
                : 0;
        List<String> answers = killed(session);
        kills++;
        Optional<Path> folder = session.or(() -> newest(known));
        if (folder.isEmpty()) {
            require(answers.isEmpty(), "answered without any record: " + answers);
            return Optional.empty();
        }
        RecordedSession recorded;
        try {
            recorded = RecordedSession.read(folder.get());
        } catch (RecordUnavailableException e) {
            require(answers.isEmpty(), "answered without a header: " + answers);
            return Optional.empty();
        }
        recorded.fault().ifPresent(fault -> {
            require(fault.kind() == RecordFault.Kind.TORN, "the record is damaged: " + fault);
            torn++;
        });
        List<String> inRecord =
                recorded
                        .entries()
                        .subList(
                                Math.min(before, recorded.entries().size()),
                                recorded.entries().size())
                        .stream()
                        .map(Entry::said)
                        .flatMap(List::stream)
                        .toList();
        require(
                inRecord.size() >= answers.size()
                        && inRecord.subList(0, answers.size()).equals(answers),
                "answered " + answers + " but recorded " + inRecord);
        acknowledged += answers.size();
        if (session.isPresent() && recorded.entries().size() > before) {
            resumed++;
        }
        if (recorded.closed()) {
            ended++;
        }
        return recorded.closed() || recorded.entries().isEmpty() ? Optional.empty() : folder;
    }

    /** The complete lines that the program answered before it was killed. */
    private List<String> killed(Optional<Path> session) throws IOException {
        Process process = start(session);
        List<String> answers = new ArrayList<>();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            feed(process);
            int awaited = random.nextInt(MOST_LINES_AWAITED);
            @Nullable String line = "";
            for (int i = 0; i < awaited && line != null; i++) {
                line = out.readLine();
                take(line, answers);
            }
            LockSupport.parkNanos(1000L * random.nextInt(MOST_MICROSECONDS));
            // Process.destroyForcibly would also close the stream that still holds answers.
            process.toHandle().destroyForcibly();
            String rest = drain(out);
            int complete = rest.lastIndexOf('\n');
            if (complete >= 0) {
                rest.substring(0, complete).lines().forEach(each -> take(each, answers));
            }
        }
        process.onExit().join();
        return answers;
    }

    private static String drain(BufferedReader out) throws IOException {
        StringBuilder rest = new StringBuilder();
        for (int c = out.read(); c >= 0; c = out.read()) {
            rest.append((char) c);
        }
        return rest.toString();
    }

    private static void take(@Nullable String line, List<String> answers) {
        if (line != null && line.startsWith(SAID)) {
            answers.add(line.substring(SAID.length()));
        }
    }

    private void feed(Process process) {
        StringBuilder words = new StringBuilder("four ten a\npiston\nunderstood\nyes\nyes\nninety five\n");
        for (int i = 0; i < 60; i++) {
            words.append("suction pressure one one ").append(digit()).append('\n');
            words.append("note seen at step ").append(digit()).append('\n');
            words.append("why\n");
        }
        try (OutputStream in = process.getOutputStream()) {
            in.write(words.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            // The program was gone before it had read everything: that is what is being tried here.
            return;
        }
    }

    private String digit() {
        return List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
                .get(random.nextInt(9));
    }

    private Process start(Optional<Path> session) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "readback.assistant.Readback",
                "check",
                "--typed",
                "--altitude-ft",
                "0",
                "--sessions",
                sessions.toString()));
        session.ifPresent(folder -> {
            command.add("--resume");
            command.add(folder.toString());
        });
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private List<Path> folders() throws IOException {
        try (Stream<Path> folders = Files.list(sessions)) {
            return folders.filter(Files::isDirectory).toList();
        }
    }

    private Optional<Path> newest(List<Path> known) {
        try {
            return folders().stream().filter(each -> !known.contains(each)).findFirst();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new AssertionError(otherwise);
        }
    }
}
