package readback.fleet;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FSDataInputStream;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.SparkEnv;
import org.apache.spark.deploy.SparkHadoopUtil;
import readback.assistant.archive.Bundle;
import readback.assistant.archive.BundledSession;

/** Where bundles lie: on a disk, or wherever else the engine reads, named by its addresses. Used by every executor. */
final class BundleStore {

    private BundleStore() {}

    /**
     * The bundles that are named: files, and all that lie in folders; each once, by name.
     *
     * @throws FleetFailure for a place that is not there, and where there is no bundle at all
     */
    static List<String> find(List<String> places) {
        List<String> bundles = new ArrayList<>();
        for (String place : places) {
            try {
                find(new Path(place), bundles);
            } catch (FileNotFoundException e) {
                throw new FleetFailure(
                        "There is no '" + place + "': name bundles, or folders that 'readback sessions --pack' wrote.",
                        e);
            } catch (IOException | IllegalArgumentException e) {
                throw new FleetFailure("'" + place + "' cannot be read (" + e.getMessage() + ").", e);
            }
        }
        if (bundles.isEmpty()) {
            throw new FleetFailure("There is no bundle (*" + Bundle.ENDING + ") in " + String.join(", ", places)
                    + ": pack the sessions first, with 'readback sessions DIR --pack FOLDER'.");
        }
        return bundles.stream().distinct().sorted().toList();
    }

    private static void find(Path place, List<String> bundles) throws IOException {
        FileStatus named = files(place).getFileStatus(place);
        if (named.isFile()) {
            bundles.add(named.getPath().toString());
            return;
        }
        for (FileStatus file : files(place).listStatus(place)) {
            if (file.isFile() && file.getPath().getName().endsWith(Bundle.ENDING)) {
                bundles.add(file.getPath().toString());
            }
        }
    }

    /** What a bundle holds, and whether it is as it was packed; one that cannot be read holds nothing and says why. */
    static Bundle read(String bundle) {
        try {
            Path path = new Path(bundle);
            byte[] bytes;
            try (InputStream in = files(path).open(path)) {
                bytes = in.readAllBytes();
            }
            return Bundle.of(bytes, index(path.suffix(Bundle.INDEX)));
        } catch (IOException e) {
            return new Bundle(List.of(), List.of("cannot be read: " + e.getMessage()));
        }
    }

    private static Optional<List<BundledSession>> index(Path path) throws IOException {
        try (InputStream in = files(path).open(path)) {
            return Optional.of(BundledSession.all(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (FileNotFoundException none) {
            return Optional.empty();
        }
    }

    /**
     * The record of a session in a bundle.
     *
     * @throws IOException when it is not there any more
     */
    static byte[] record(String bundle, int offset, int length) throws IOException {
        Path path = new Path(bundle);
        try (FSDataInputStream in = files(path).open(path)) {
            byte[] record = new byte[length];
            in.readFully(offset, record);
            return record;
        }
    }

    /** A disk is read without check sums beside its files: nobody else knows of those. */
    private static FileSystem files(Path path) throws IOException {
        Configuration settings =
                SparkHadoopUtil.get().newConfiguration(SparkEnv.get().conf());
        FileSystem files = path.getFileSystem(settings);
        if (files instanceof org.apache.hadoop.fs.LocalFileSystem local) {
            return local.getRawFileSystem();
        }
        return files;
    }

    /** Records of bundles, bundle after bundle: each is read once. One thread. */
    static final class Sequence {
        private String path = "";
        private byte[] bytes = new byte[0];

        /** The record of a session in a bundle. */
        byte[] record(String bundle, int offset, int length) {
            if (!bundle.equals(path)) {
                try (InputStream in = files(new Path(bundle)).open(new Path(bundle))) {
                    bytes = in.readAllBytes();
                    path = bundle;
                } catch (IOException e) {
                    throw new UncheckedIOException("the bundle " + bundle + " went away", e);
                }
            }
            return Arrays.copyOfRange(bytes, offset, offset + length);
        }
    }
}
