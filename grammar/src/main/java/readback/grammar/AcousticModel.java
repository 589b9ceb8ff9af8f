package readback.grammar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * An acoustic model that comes with Readback, as the files of its manifest. Where and how they are unpacked is the
 * ear's business; the words that the models can hear at all, the same in both, bound every {@link Vocabulary}.
 *
 * <p>Immutable and safe for any thread.
 */
public final class AcousticModel {

    private static final String WORDS = "graph/words.txt";

    private final String folder;
    private final String id;
    private final List<ModelFile> files;
    private final SortedSet<String> words;

    /**
     * A file of the model.
     *
     * @param name path inside the model folder, with forward slashes
     * @param size in bytes
     * @param sha256 lower-case hexadecimal
     */
    public record ModelFile(String name, long size, String sha256) {}

    private AcousticModel(String folder, String id, List<ModelFile> files, SortedSet<String> words) {
        this.folder = folder;
        this.id = id;
        this.files = List.copyOf(files);
        this.words = Collections.unmodifiableSortedSet(words);
    }

    /**
     * The model that hears everything.
     *
     * @throws IllegalStateException if the installation lacks it
     */
    public static AcousticModel bundled() {
        return in("model/");
    }

    /**
     * The model that is asked where the first one leaves doubt: other people, another network. Decision 0013.
     *
     * @throws IllegalStateException if the installation lacks it
     */
    public static AcousticModel second() {
        return in("second-model/");
    }

    private static AcousticModel in(String folder) {
        String id = "";
        List<ModelFile> files = new ArrayList<>();
        for (String line : lines(folder, "MANIFEST")) {
            String[] fields = line.split(" ", 3);
            if (line.startsWith("#")) {
                continue;
            }
            if (fields[0].equals("id")) {
                id = fields[1];
            } else {
                files.add(new ModelFile(fields[2], Long.parseLong(fields[1]), fields[0]));
            }
        }
        return new AcousticModel(folder, id, files, wordsOf(lines(folder, WORDS)));
    }

    /** The name and version of the model, as in "readback-en-2"; another version has other files. */
    public String id() {
        return id;
    }

    /** Every file that the recogniser needs, in the order of the manifest. */
    public List<ModelFile> files() {
        return files;
    }

    /**
     * The bytes of one file. The caller closes it.
     *
     * @param name a name of {@link #files()}
     * @throws IllegalArgumentException if the manifest has no such file
     */
    public InputStream open(String name) {
        if (files.stream().noneMatch(file -> file.name().equals(name))) {
            throw new IllegalArgumentException("the model " + id + " has no file " + name);
        }
        return resource(folder, name);
    }

    /** The words that the model can hear, with {@code [unk]}, without the symbols of its graph. */
    public SortedSet<String> words() {
        return words;
    }

    /**
     * The words of a {@code words.txt} in the layout of the recogniser, as another model's folder holds it.
     *
     * @param lines "word number"
     */
    public static SortedSet<String> wordsOf(List<String> lines) {
        SortedSet<String> words = new TreeSet<>();
        for (String line : lines) {
            String word = line.strip().split("\\s+", 2)[0];
            boolean symbol = word.startsWith("<") || word.startsWith("#") || word.isEmpty();
            if (!symbol) {
                words.add(word);
            }
        }
        return words;
    }

    private static List<String> lines(String folder, String name) {
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(resource(folder, name), StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name + " of the acoustic model", e);
        }
    }

    private static InputStream resource(String folder, String name) {
        InputStream stream = AcousticModel.class.getResourceAsStream(folder + name);
        if (stream == null) {
            throw new IllegalStateException("the installation is incomplete: the acoustic model lacks " + name);
        }
        return stream;
    }
}
