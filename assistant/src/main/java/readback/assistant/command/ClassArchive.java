package readback.assistant.command;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import readback.assistant.ear.CacheFolder;

/**
 * The classes of the program as Java maps them into memory, which starts it sooner. Java takes such an archive only on
 * the machine where it was made, with the same runtime and jars, so it is made on the tablet: a call that nobody hears
 * is rehearsed to learn which classes are wanted, then Java writes them. The launcher names the archive to the runtime
 * that came with Readback; one that does not fit is passed over by Java without a word. Decision 0015.
 *
 * <p>It lies among the user's own caches and nowhere else: a folder that others can write would let them choose what
 * runs here.
 */
final class ClassArchive {

    /** What the launcher says: the archive that it named to Java. */
    private static final String NAMED = "readback.archive";

    private static final String FILE = "classes.jsa";

    /** Many times what it takes on a slow tablet. */
    private static final long PATIENCE_SECONDS = 120;

    /** A call in short: readings, a correction, the way out. No device is opened, by names that none has. */
    private static final List<String> REHEARSAL =
            List.of("four ten a", "piston", "why", "suction 118", "finish", "yes");

    /**
     * Before it maps an archive, Java 17 looks whether the last part of it is there, which only this collector writes:
     * one that is cut short is passed over then, and without that part stops Java. Starts with another collector use
     * all else.
     */
    private static final String WITH_ITS_END = "-XX:+UseG1GC";

    private static final String NO_DEVICE = "none for the rehearsal";

    private final Path folder;
    private final Path java;
    private final Path jar;

    /**
     * @param folder where it lies
     * @param java the program of the runtime
     * @param jar what the launcher starts
     */
    ClassArchive(Path folder, Path java, Path jar) {
        this.folder = folder;
        this.java = java;
        this.jar = jar;
    }

    /** That of this program; empty where it was not started by the launcher with the runtime that came with it. */
    static Optional<ClassArchive> ofProgram() {
        Path runtime = Path.of(System.getProperty("java.home", "")).toAbsolutePath();
        Path jar = Path.of(System.getProperty("java.class.path", "")).toAbsolutePath();
        boolean packed = runtime.equals(VoiceOptions.home().resolve("runtime").toAbsolutePath())
                && jar.toString().endsWith(".jar");
        Path program = runtime.resolve("bin")
                .resolve(System.getProperty("os.name", "").startsWith("Windows") ? "java.exe" : "java");
        return packed ? Optional.of(new ClassArchive(CacheFolder.ofUser(), program, jar)) : Optional.empty();
    }

    /** Where it lies, if it does. */
    Path file() {
        return folder.resolve(FILE);
    }

    /** Whether this program was started with it, and Java took it. */
    boolean used() {
        return file().toString().equals(System.getProperty(NAMED))
                && System.getProperty("java.vm.info", "").contains("sharing");
    }

    /**
     * Makes it anew, which takes two starts' time.
     *
     * @throws IOException when it cannot be made or kept there
     */
    void make() throws IOException {
        Files.createDirectories(folder);
        Path work = Files.createTempDirectory(folder, "classes-");
        try {
            Path list = work.resolve("classes");
            Path made = work.resolve(FILE);
            run(
                    REHEARSAL,
                    List.of(
                            "-XX:+UseSerialGC",
                            "-Xshare:off",
                            "-XX:DumpLoadedClassList=" + list,
                            "-Dreadback.home=" + VoiceOptions.home(),
                            "-jar",
                            jar.toString(),
                            "check",
                            "--plain",
                            "--voice",
                            "none",
                            "--microphone",
                            NO_DEVICE,
                            "--loudspeaker",
                            NO_DEVICE,
                            "--sessions",
                            work.resolve("sessions").toString()));
            run(
                    List.of(),
                    List.of(
                            WITH_ITS_END,
                            "-Xshare:dump",
                            "-Xlog:disable",
                            "-XX:SharedClassListFile=" + list,
                            "-XX:SharedArchiveFile=" + made,
                            "-cp",
                            jar.toString()));
            if (!Files.isRegularFile(made)) {
                throw new IOException("Java wrote none");
            }
            // its name is for what is whole, also after a power cut
            try (FileChannel written = FileChannel.open(made, StandardOpenOption.READ)) {
                written.force(true);
            }
            Files.move(made, file(), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            CacheFolder.remove(work);
        }
    }

    private void run(List<String> lines, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(java.toString()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            try (OutputStream typed = process.getOutputStream()) {
                typed.write((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            } catch (IOException over) {
                // it did not wait for all lines; what it came to is seen by what it wrote
            }
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IOException("it took longer than " + PATIENCE_SECONDS + " s");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } finally {
            process.destroyForcibly();
        }
    }
}
