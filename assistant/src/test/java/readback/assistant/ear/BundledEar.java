package readback.assistant.ear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import readback.grammar.AcousticModel;

/** The real ear with the bundled model, unpacked below the build folder once for all tests. */
public final class BundledEar {
    private BundledEar() {}

    static ModelFolder model() throws EarUnavailableException {
        return UnpackedModel.in(Path.of("target", "test-cache"), AcousticModel.bundled());
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

    public static VoskEar open() throws EarUnavailableException {
        return VoskEar.open(model());
    }
}
