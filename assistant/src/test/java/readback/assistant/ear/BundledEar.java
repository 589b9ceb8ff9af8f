package readback.assistant.ear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import readback.grammar.AcousticModel;

/** The real ear with the bundled models, unpacked below the build folder once for all tests. */
public final class BundledEar {
    private BundledEar() {}

    private static final Path CACHE = Path.of("target", "test-cache");

    static ModelFolder model() throws EarUnavailableException {
        return UnpackedModel.in(CACHE, AcousticModel.bundled());
    }

    /** Copies the model, so that it can be spoilt. */
    static void copyTo(Path folder) throws IOException, EarUnavailableException {
        Path model = model().folder();
        try (Stream<Path> tree = Files.walk(model)) {
            for (Path path : tree.toList()) {
                Path copy = folder.resolve(model.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(path, copy);
                }
            }
        }
    }

    /** As the program listens. */
    public static Ear open() throws EarUnavailableException {
        return new SecondOpinion(first(), VoskEar.open(UnpackedModel.in(CACHE, AcousticModel.second())));
    }

    /** The ear that hears everything, alone. */
    static VoskEar first() throws EarUnavailableException {
        return VoskEar.open(model());
    }
}
