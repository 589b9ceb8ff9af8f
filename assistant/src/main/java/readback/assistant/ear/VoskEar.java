package readback.assistant.ear;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.vosk.LibVosk;
import org.vosk.LogLevel;
import org.vosk.Model;
import org.vosk.Recognizer;
import readback.grammar.Vocabulary;

/**
 * The ear made of the Vosk recogniser and a model folder.
 *
 * <p>A step's phrases become a fresh recogniser each time; changing the phrases of a running one leaks memory in Vosk
 * 0.3.45, and making one costs a few milliseconds.
 */
public final class VoskEar implements Ear {
    /** Alternatives asked for; the recogniser may give fewer. */
    private static final int ALTERNATIVES = 8;

    private static final ObjectMapper JSON = new ObjectMapper();

    private final CompletableFuture<Model> model;
    private final ModelFolder folder;
    private final LibraryPath path;

    private VoskEar(CompletableFuture<Model> model, ModelFolder folder, LibraryPath path) {
        this.model = model;
        this.folder = folder;
        this.path = path;
    }

    /**
     * An ear with the model of the folder loaded.
     *
     * @throws EarUnavailableException when the native library or the model cannot be loaded
     */
    public static VoskEar open(ModelFolder folder) throws EarUnavailableException {
        LibraryPath path = path(folder);
        return new VoskEar(CompletableFuture.completedFuture(load(folder, path)), folder, path);
    }

    /**
     * An ear whose model is loaded beside what else is done, for a model that was opened before or whose files were
     * found whole: who listens before it is there waits. That it cannot be loaded is a broken set-up then, and told by
     * an {@link IllegalStateException}.
     *
     * @throws EarUnavailableException when this machine has no native library, or the library cannot name the folder
     */
    public static VoskEar openLater(ModelFolder folder) throws EarUnavailableException {
        LibraryPath path = path(folder);
        CompletableFuture<Model> model = new CompletableFuture<>();
        Thread loading = new Thread(
                () -> {
                    try {
                        model.complete(load(folder, path));
                    } catch (EarUnavailableException | RuntimeException e) {
                        model.completeExceptionally(e);
                    }
                },
                "model-load");
        loading.setDaemon(true);
        loading.start();
        return new VoskEar(model, folder, path);
    }

    private static LibraryPath path(ModelFolder folder) throws EarUnavailableException {
        Optional<String> fault = noneForThisMachine();
        if (fault.isPresent()) {
            throw new EarUnavailableException(fault.get());
        }
        LibraryPath.Naming naming = LibraryPath.Naming.ofThisSystem();
        NativeCode.choosePlace(naming);
        return LibraryPath.of(folder.folder(), naming);
    }

    private static Model load(ModelFolder folder, LibraryPath path) throws EarUnavailableException {
        try {
            // The library writes its log to the error stream by itself; nothing in it is for the technician.
            LibVosk.setLogLevel(LogLevel.WARNINGS);
            LibVosk.vosk_set_log_level(-2);
            return new Model(path.name());
        } catch (IOException damaged) {
            throw new EarUnavailableException(
                    "The speech model in '" + folder.folder() + "' is damaged: copy it again.", damaged);
        } catch (UnsatisfiedLinkError | NoClassDefFoundError unlinked) {
            throw new EarUnavailableException(
                    "The recogniser's native library cannot be loaded on this machine (" + unlinked.getMessage()
                            + "): Readback listens on 64-bit Linux, Windows and macOS; --typed works everywhere.",
                    unlinked);
        }
    }

    /** Why there can be no such ear on this machine, whatever model there is; empty where there may be one. */
    public static Optional<String> noneForThisMachine() {
        return RecogniserPlatform.fault();
    }

    @Override
    public String name() {
        return "vosk 0.3.45, " + folder.name();
    }

    @Override
    public String place() {
        return path.described();
    }

    @Override
    public Listening listen(Vocabulary vocabulary) {
        List<String> phrases = vocabulary.phrases();
        List<String> known = new ArrayList<>();
        for (String phrase : phrases) {
            boolean words = !phrase.isBlank() && !phrase.equals(UNKNOWN);
            if (words && missing(Arrays.asList(phrase.split(" "))).isEmpty()) {
                known.add(phrase);
            }
        }
        if (folder.words().contains(UNKNOWN)) {
            known.add(UNKNOWN);
        }
        if (known.isEmpty()) {
            // An empty list would crash the native library.
            throw new IllegalArgumentException("The model " + folder.name() + " lacks words of every one of these "
                    + phrases.size() + " phrases.");
        }
        String grammar = json(known);
        Recognizer recogniser = new Recognizer(loaded(), RATE, grammar);
        if (recogniser.getPointer() == null) {
            throw new IllegalStateException("The recogniser refused the phrases " + grammar);
        }
        recogniser.setMaxAlternatives(ALTERNATIVES);
        recogniser.setWords(true);
        return new VoskListening(recogniser, vocabulary.completion());
    }

    private Model loaded() {
        try {
            return model.join();
        } catch (CompletionException e) {
            throw new IllegalStateException("The model " + folder.name() + " cannot be loaded.", e.getCause());
        }
    }

    private static String json(List<String> phrases) {
        try {
            return JSON.writeValueAsString(phrases);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Words can always be written.", e);
        }
    }

    @Override
    public SortedSet<String> missing(Collection<String> words) {
        SortedSet<String> missing = new TreeSet<>(words);
        missing.removeAll(folder.words());
        return missing;
    }

    @Override
    public void close() {
        try {
            model.join().close();
        } catch (CompletionException e) {
            // it was never loaded, and nothing is to be freed
        }
    }
}
