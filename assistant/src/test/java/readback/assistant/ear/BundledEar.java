package readback.assistant.ear;

import java.nio.file.Path;
import readback.grammar.AcousticModel;

/** The real ear with the bundled model, unpacked below the build folder once for all tests. */
public final class BundledEar {
    private BundledEar() {}

    static ModelFolder model() throws EarUnavailableException {
        return UnpackedModel.in(Path.of("target", "test-cache"), AcousticModel.bundled());
    }

    public static VoskEar open() throws EarUnavailableException {
        return VoskEar.open(model());
    }
}
