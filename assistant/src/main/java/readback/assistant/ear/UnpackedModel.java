package readback.assistant.ear;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import readback.assistant.digest.Sha256;
import readback.grammar.AcousticModel;
import readback.grammar.AcousticModel.ModelFile;

/**
 * The bundled model as files on disk, which the native recogniser needs. It is unpacked once into a cache folder: into
 * a folder of another name first, which gets its own name when every file is there and has its hash, so that a program
 * killed in between leaves nothing that could be taken for a model. Every start checks the hashes again and repairs.
 * Processes that start together wait for each other.
 */
public final class UnpackedModel {
    private UnpackedModel() {}

    /**
     * The folder of the bundled model in the first of this user's caches that can be written and that the recogniser
     * can open.
     *
     * @throws EarUnavailableException when there is none; it tells what is wrong with the first
     */
    public static ModelFolder ofUser(AcousticModel model) throws EarUnavailableException {
        LibraryPath.Naming naming = LibraryPath.Naming.ofThisSystem();
        NativeCode.choosePlace(naming);
        return inFirst(CacheFolder.all(), model, naming);
    }

    static ModelFolder inFirst(List<Path> caches, AcousticModel model, LibraryPath.Naming naming)
            throws EarUnavailableException {
        @Nullable EarUnavailableException first = null;
        for (Path cache : caches) {
            try {
                ModelFolder unpacked = in(cache, model);
                LibraryPath.of(unpacked.folder(), naming);
                return unpacked;
            } catch (EarUnavailableException unfit) {
                if (first == null) {
                    first = unfit;
                } else {
                    first.addSuppressed(unfit);
                }
            }
        }
        throw first == null ? new EarUnavailableException("There is no place for the speech model.") : first;
    }

    /**
     * The folder of the bundled model under {@code cache}, unpacked if need be.
     *
     * @throws EarUnavailableException when the cache folder cannot be written
     */
    public static ModelFolder in(Path cache, AcousticModel model) throws EarUnavailableException {
        Path folder = cache.resolve(model.id() + "-" + fingerprint(model.files()));
        try {
            if (!whole(folder, model.files())) {
                // The lock file holds off other processes, the monitor other threads of this one.
                synchronized (UnpackedModel.class) {
                    unpackLocked(cache, folder, model);
                }
            }
        } catch (IOException failed) {
            throw new EarUnavailableException(
                    "The speech model cannot be unpacked into '" + cache + "' (" + reason(failed)
                            + "): make room or make it writable, or set XDG_CACHE_HOME to a folder that is.",
                    failed);
        }
        return new ModelFolder(folder, model.id(), model.words());
    }

    private static void unpackLocked(Path cache, Path folder, AcousticModel model) throws IOException {
        Files.createDirectories(cache);
        try (FileChannel channel = FileChannel.open(
                        cache.resolve("model.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            if (!lock.isValid() || whole(folder, model.files())) {
                return;
            }
            clearLeftovers(cache, folder);
            Path fresh = Files.createTempDirectory(cache, folder.getFileName() + ".part-");
            for (ModelFile file : model.files()) {
                Path target = fresh.resolve(file.name());
                Path parent = target.getParent();
                if (parent != null) {
                    Files.createDirectories(parent);
                }
                try (InputStream in = model.open(file.name())) {
                    Files.copy(in, target);
                }
            }
            if (!whole(fresh, model.files())) {
                throw new IOException("the bundled model is damaged, install Readback again");
            }
            if (Files.exists(folder)) {
                Files.move(folder, cache.resolve(fresh.getFileName() + "-old"), StandardCopyOption.ATOMIC_MOVE);
            }
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
            clearLeftovers(cache, folder);
        }
    }

    /** Removes what killed programs left; under the lock nobody else is unpacking. */
    private static void clearLeftovers(Path cache, Path folder) throws IOException {
        List<Path> leftovers;
        try (Stream<Path> all = Files.list(cache)) {
            leftovers = all.filter(path -> path.getFileName().toString().startsWith(folder.getFileName() + ".part-"))
                    .toList();
        }
        for (Path leftover : leftovers) {
            CacheFolder.remove(leftover);
        }
    }

    private static boolean whole(Path folder, List<ModelFile> files) throws IOException {
        for (ModelFile file : files) {
            Path path = folder.resolve(file.name());
            if (!Files.isRegularFile(path) || Files.size(path) != file.size()) {
                return false;
            }
            if (!sha256(path).equals(file.sha256())) {
                return false;
            }
        }
        return true;
    }

    private static String sha256(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return new Sha256().add(in).hex();
        }
    }

    /** A short name for exactly these files, so that another version never meets this one's folder. */
    private static String fingerprint(List<ModelFile> files) {
        Sha256 digest = new Sha256();
        for (ModelFile file : files) {
            digest.add(file.name() + ' ' + file.sha256() + '\n');
        }
        return digest.hex(6);
    }

    private static String reason(IOException failed) {
        return failed.getMessage() == null
                ? failed.getClass().getSimpleName()
                : failed.getClass().getSimpleName().replace("Exception", "") + ": " + failed.getMessage();
    }
}
