package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ModelFolderTest {
    private static final List<String> LAYERED = List.of(
            "am/final.mdl",
            "conf/model.conf",
            "conf/mfcc.conf",
            "graph/HCLr.fst",
            "graph/Gr.fst",
            "graph/disambig_tid.int",
            "graph/words.txt");
    private static final List<String> FLAT =
            List.of("final.mdl", "mfcc.conf", "HCLr.fst", "Gr.fst", "disambig_tid.int", "words.txt");

    @TempDir
    Path folder;

    private void lay(List<String> files) throws IOException {
        for (String file : files) {
            Path path = folder.resolve(file);
            Files.createDirectories(path.getParent());
            Files.writeString(path, "<eps> 0\nsuction 1\npsi 2\n[unk] 3\n#0 4\n");
        }
    }

    @Test
    void aWholeFolderIsAModelAndItsWordsAreKnown() throws IOException, EarUnavailableException {
        lay(LAYERED);

        assertThat(ModelFolder.at(folder).words()).containsExactly("[unk]", "psi", "suction");
    }

    @Test
    void theOlderLayoutIsAModelToo() throws IOException, EarUnavailableException {
        lay(FLAT);

        assertThat(ModelFolder.at(folder).words()).contains("suction");
    }

    @Test
    void whatIsMissingIsNamed() throws IOException {
        lay(LAYERED.subList(0, 4));

        assertThatThrownBy(() -> ModelFolder.at(folder))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("graph/Gr.fst, graph/disambig_tid.int, graph/words.txt")
                .hasMessageContaining("--model");
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertThatThrownBy(() -> ModelFolder.at(folder.resolve("nowhere")))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("no folder")
                .hasMessageContaining("nowhere");
    }

    @Test
    void aFixedGraphCannotTakePhrases() throws IOException {
        lay(LAYERED);
        lay(List.of("graph/HCLG.fst"));

        assertThatThrownBy(() -> ModelFolder.at(folder))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("fixed graph");
    }
}
