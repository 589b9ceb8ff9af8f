package readback.assistant.ear;

import java.nio.file.Path;
import readback.grammar.AcousticModel;

/** A process of its own that unpacks the model and says where. */
final class UnpackingProgram {
    private UnpackingProgram() {}

    public static void main(String[] args) throws EarUnavailableException {
        System.out.print(
                UnpackedModel.in(Path.of(args[0]), AcousticModel.bundled()).folder());
    }
}
