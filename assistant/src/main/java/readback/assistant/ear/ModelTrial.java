package readback.assistant.ear;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.vosk.Model;
import org.vosk.Recognizer;

/**
 * Opens a model of unknown origin in a process of its own first: a cut or damaged file ends the process that loads it,
 * without an exception. The bundled model needs no trial, its hashes are known.
 */
public final class ModelTrial {

    /** How a file of the OpenFst library begins: kFstMagicNumber of its fst.h. */
    private static final int GRAPH = 0x7eb2fdd6;

    /** How Kaldi's binary files begin: InitKaldiOutputStream of its io-funcs; text begins with a token. */
    private static final List<byte[]> NETWORK = List.of(new byte[] {0, 'B'}, new byte[] {'<'});

    /** Loading a large model takes some seconds. */
    private static final long SECONDS = 90;

    private ModelTrial() {}

    /**
     * The folder, once a process of its own has listened with its model.
     *
     * @throws EarUnavailableException when it could not
     */
    public static ModelFolder passed(ModelFolder model) throws EarUnavailableException {
        for (Path graph : model.graphs()) {
            ByteBuffer head = ByteBuffer.wrap(head(graph, Integer.BYTES)).order(ByteOrder.LITTLE_ENDIAN);
            if (head.remaining() < Integer.BYTES || head.getInt() != GRAPH) {
                throw new EarUnavailableException(
                        "'" + graph + "' is no graph of a speech model: copy the model again.");
            }
        }
        Path network = model.network();
        byte[] head = head(network, 2);
        if (NETWORK.stream().noneMatch(begin -> beginsWith(head, begin))) {
            throw new EarUnavailableException("'" + network
                    + "' is no network of a speech model, the file may be damaged: copy the model again.");
        }
        if (!listens(model.folder())) {
            throw new EarUnavailableException("The speech model in '" + model.folder()
                    + "' is damaged, or needs more memory than there is: copy it again, or leave out --model.");
        }
        return model;
    }

    private static byte[] head(Path file, int bytes) throws EarUnavailableException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(bytes);
        } catch (IOException unreadable) {
            throw new EarUnavailableException("'" + file + "' cannot be read: copy the model again.", unreadable);
        }
    }

    private static boolean beginsWith(byte[] head, byte[] begin) {
        return ByteBuffer.wrap(head).limit(Math.min(head.length, begin.length)).equals(ByteBuffer.wrap(begin));
    }

    private static boolean listens(Path folder) throws EarUnavailableException {
        try {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            // a crash is an answer here, not a thing to report
                            "-XX:+SuppressFatalErrorMessage",
                            "-cp",
                            System.getProperty("java.class.path"),
                            ModelTrial.class.getName(),
                            LibraryPath.of(folder, LibraryPath.Naming.ofThisSystem())
                                    .name())
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
            process.destroyForcibly();
            return ended && process.exitValue() == 0;
        } catch (IOException e) {
            throw new EarUnavailableException(
                    "The speech model in '" + folder + "' cannot be tried, because no process can be started ("
                            + e.getMessage() + "): leave out --model.",
                    e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new EarUnavailableException("The trial of the speech model in '" + folder + "' was broken off.", e);
        }
    }

    /**
     * Listens to a moment of nothing with the model in the folder that is the only argument: with phrases, as always,
     * and without, so that its own graph of words is read too.
     */
    public static void main(String[] folder) throws EarUnavailableException, IOException {
        ModelFolder model = ModelFolder.at(Path.of(folder[0]));
        try (Ear ear = VoskEar.open(model);
                Listening listening = ear.listen(List.copyOf(model.words()))) {
            listening.hear(new short[Ear.RATE / 2]);
            listening.finish();
        }
        try (Model all = new Model(folder[0]);
                Recognizer free = new Recognizer(all, Ear.RATE)) {
            free.acceptWaveForm(new short[Ear.RATE / 2], Ear.RATE / 2);
            free.getFinalResult();
        }
    }
}
