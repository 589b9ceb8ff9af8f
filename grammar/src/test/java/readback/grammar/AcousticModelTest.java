package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AcousticModelTest {

    private final AcousticModel model = AcousticModel.bundled();

    static List<AcousticModel> both() {
        return List.of(AcousticModel.bundled(), AcousticModel.second());
    }

    @ParameterizedTest
    @MethodSource("both")
    void everyFileHasTheSizeAndTheHashOfTheManifest(AcousticModel model) throws Exception {
        assertThat(model.files()).hasSizeGreaterThan(5);
        for (AcousticModel.ModelFile file : model.files()) {
            try (InputStream stream = model.open(file.name())) {
                byte[] bytes = stream.readAllBytes();
                assertThat((long) bytes.length).as(file.name()).isEqualTo(file.size());
                String sha256 = HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
                assertThat(sha256).as(file.name()).isEqualTo(file.sha256());
            }
        }
    }

    /** The files without which vosk-api 0.3.45 does not load a model for run-time grammars (src/model.cc). */
    @ParameterizedTest
    @MethodSource("both")
    void nothingIsMissingThatARunTimeGrammarNeeds(AcousticModel model) {
        assertThat(model.files())
                .extracting(AcousticModel.ModelFile::name)
                .contains(
                        "am/final.mdl",
                        "conf/model.conf",
                        "conf/mfcc.conf",
                        "graph/HCLr.fst",
                        "graph/Gr.fst",
                        "graph/disambig_tid.int",
                        "graph/words.txt",
                        "graph/phones/word_boundary.int")
                .doesNotContain("graph/HCLG.fst");
    }

    @Test
    void itHearsDigitsAndUnknownWordsButNoSymbols() {
        assertThat(model.words()).contains("seven", "superheat", "[unk]").doesNotContain("<eps>", "#0", "<s>", "</s>");
        assertThat(model.id()).matches("readback-en-[1-9][0-9]*");
    }

    /** A phrase that one of them could not hear would be heard by the other alone. */
    @Test
    void bothHearTheSameWordsAndHaveNamesOfTheirOwn() {
        assertThat(AcousticModel.second().words()).isEqualTo(model.words());
        assertThat(AcousticModel.second().id())
                .matches("readback-en-[1-9][0-9]*")
                .isNotEqualTo(model.id());
    }

    @Test
    void aFileOutsideTheManifestIsRefused() {
        assertThatThrownBy(() -> model.open("../Grammar.class"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("../Grammar.class");
    }

    @Test
    void wordsOfAForeignModelAreReadTheSameWay() {
        assertThat(AcousticModel.wordsOf(List.of("<eps> 0", "!SIL 1", "seven 2", "#0 3", "")))
                .containsExactly("!SIL", "seven");
    }
}
