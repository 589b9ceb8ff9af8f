package readback.grammar.lexicon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class DefinitionsTest {

    @Test
    void sectionsKeepTheirItemsInOrder() {
        Definitions definitions = Definitions.parse(
                "x.txt", List.of("# remark", "", "loose = a", "[one]", "say = b; ~c d", "say = e", "[two]", "say = f"));

        assertThat(definitions.items("", "loose")).containsExactly("a");
        assertThat(definitions.items("one", "say")).containsExactly("b", "~c d", "e");
        assertThat(definitions.items("two", "say")).containsExactly("f");
        assertThat(definitions.items("two", "about")).isEmpty();
        assertThat(definitions.items("three", "say")).isEmpty();
        assertThat(definitions.sections().keySet()).containsExactly("", "one", "two");
    }

    @Test
    void aLineWithoutAKeyIsNamedWithItsPlace() {
        assertThatThrownBy(() -> Definitions.parse("x.txt", List.of("[one]", "say yes")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("x.txt, line 2: no \" = \" in \"say yes\"");
    }

    @Test
    void aMissingKeyIsNamed() {
        Definitions definitions = Definitions.parse("x.txt", List.of("[one]", "say = b"));

        assertThat(definitions.required("one", "say")).containsExactly("b");
        assertThatThrownBy(() -> definitions.required("one", "about")).hasMessage("x.txt: [one] lacks \"about\"");
    }

    @Test
    void aMissingFileIsABrokenInstallation() {
        assertThatThrownBy(() -> Definitions.load("nothing.txt")).hasMessageContaining("nothing.txt");
    }

    @Test
    void aPhraseAfterATildeIsNotListenedFor() {
        assertThat(Phrase.of("~sub cooling")).isEqualTo(new Phrase("sub cooling", false));
        assertThat(Phrase.of("subcooling")).isEqualTo(new Phrase("subcooling", true));
    }
}
