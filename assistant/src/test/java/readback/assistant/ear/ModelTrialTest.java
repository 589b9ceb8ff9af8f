package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The bundled model is copied and spoilt; loaded without a trial, a cut graph ends the whole program. */
@Tag("slow")
class ModelTrialTest {

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException, EarUnavailableException {
        BundledEar.copyTo(folder);
    }

    @Test
    void aWholeModelPasses() throws EarUnavailableException {
        ModelFolder model = ModelFolder.at(folder);

        assertThat(ModelTrial.passed(model)).isSameAs(model);
    }

    @ParameterizedTest
    @CsvSource({
        "graph/HCLr.fst, 0.5",
        "graph/HCLr.fst, 0.001",
        "graph/Gr.fst, 0.5",
        "graph/Gr.fst, 0.0003",
        "am/final.mdl, 0.5",
        "am/final.mdl, 0.0001"
    })
    void aCutFileIsSaidInOneSentence(String file, double part) throws IOException, EarUnavailableException {
        try (RandomAccessFile cut = new RandomAccessFile(folder.resolve(file).toFile(), "rw")) {
            cut.setLength((long) (part * cut.length()));
        }
        ModelFolder damaged = ModelFolder.at(folder);

        assertThatThrownBy(() -> ModelTrial.passed(damaged))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining(folder.toString())
                .hasMessageContaining("copy");
    }

    @ParameterizedTest
    @ValueSource(strings = {"graph/HCLr.fst", "graph/Gr.fst", "am/final.mdl"})
    void aFileOfAnotherKindIsNamed(String file) throws IOException, EarUnavailableException {
        for (String wrong : List.of("", "no model at all")) {
            Files.writeString(folder.resolve(file), wrong);
            ModelFolder damaged = ModelFolder.at(folder);

            assertThatThrownBy(() -> ModelTrial.passed(damaged))
                    .isInstanceOf(EarUnavailableException.class)
                    .hasMessageContaining(Path.of(file).getFileName().toString());
        }
    }
}
