package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What the readers of the fact files accept, and how they name what they do not. */
class FactFilesTest {

    @Test
    void blankLinesAndCommentsDoNotCount() {
        assertThat(FactLines.of("# a comment", "", "  word  ", "key one two | three"))
                .extracting(FactLines.Line::keyword)
                .containsExactly("word", "key");
    }

    @Test
    void aLineHasWordsAndFieldsAndNumbers() {
        FactLines.Line line = FactLines.of("  key 1.5 two | three").get(0);

        assertThat(line.words()).containsExactly("1.5", "two", "|", "three");
        assertThat(line.fields()).containsExactly("1.5 two", "three");
        assertThat(line.number(0)).isEqualTo(1.5);
        assertThat(line.rest()).isEqualTo("1.5 two | three");
    }

    @Test
    void aMissingFileIsNamed() {
        assertThatThrownBy(() -> FactLines.read("nothing.txt"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("missing from the installation: nothing.txt");
    }

    @Test
    void anEquationLineBeforeAnyFluidIsRefused() {
        assertThatThrownBy(() -> EquationFacts.parse(FactLines.of("reducing 300 5000")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("equations.txt: unexpected line");
    }

    @Test
    void anIncompleteEquationIsRefused() {
        assertThatThrownBy(() -> EquationFacts.parse(FactLines.of("fluid R-1", "paper A", "ideal 1 2 3")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("equations.txt: R-1 lacks gas-constant");
    }

    @Test
    void anAncillaryOfUnknownFormIsRefused() {
        assertThatThrownBy(() -> EquationFacts.parse(
                        FactLines.of("fluid R-1", "ideal 1 2 3", "ancillary vapour-pressure cubic 300 1e6")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("equations.txt: no such form cubic");
    }

    @Test
    void equationsAreLookedUpByDesignation() {
        EquationLibrary library = EquationFacts.load();

        assertThat(library.pureFluid("R-32").molarMass()).isEqualTo(0.052024);
        assertThat(library.pureFluid("R-32").papers()).containsExactly("TillnerRoth-JPCRD-1997");
        assertThat(library.pseudoPureFluid("R-410A").pseudoPure()).isTrue();
        assertThat(library.pair("R-22", "R-125")).isEmpty();
        assertThatThrownBy(() -> library.pureFluid("R-410A")).hasMessage("no equation of state for R-410A");
        assertThatThrownBy(() -> library.pseudoPureFluid("R-32")).hasMessage("no equation of state for R-32");
        assertThatThrownBy(() -> library.paper("nobody")).hasMessage("no paper nobody");
        assertThatThrownBy(() -> library.pureFluid("R-32").ancillary("dew-pressure"))
                .hasMessage("R-32 has no ancillary for dew-pressure");
    }

    @Test
    void everyPaperOfEveryEquationIsKnown() {
        EquationLibrary library = EquationFacts.load();

        for (PureFluid fluid : library.pure().values()) {
            fluid.papers().forEach(key -> assertThat(library.paper(key).year()).matches("[0-9]{4}"));
        }
        for (PairParameters pair : library.pairs()) {
            assertThat(library.paper(pair.paper()).authors()).isNotBlank();
        }
    }

    @Test
    void aPaperWithoutAnIdentifierIsCitedWithoutOne() {
        assertThat(new Paper("A. Author", "Title", "Journal 1, 2", "1999", "-"))
                .hasToString("A. Author: Title. Journal 1, 2 (1999)");
    }

    @Test
    void aCatalogueLineBeforeAnyRefrigerantIsRefused() {
        assertThatThrownBy(() -> CatalogueFacts.parse(FactLines.of("class A1")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("refrigerants.txt: unexpected line");
    }

    @Test
    void anIncompleteRefrigerantIsRefused() {
        assertThatThrownBy(() -> CatalogueFacts.parse(FactLines.of("refrigerant R-1", "equation pure")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("refrigerants.txt: R-1 lacks class");
        assertThatThrownBy(() -> CatalogueFacts.parse(FactLines.of(
                        "refrigerant R-1", "equation pure", "class A1", "critical 300 1e6 | guessed", "odp 0")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("refrigerants.txt: R-1 lacks gwp AR4");
    }

    @Test
    void missingCurvesAreNamed() {
        CurveFacts facts = CurveFacts.parse(FactLines.of("reference R-1 100 2"));

        assertThat(facts.reference("R-1").enthalpy()).isEqualTo(100);
        assertThat(facts.reference("R-1").entropy()).isEqualTo(2);
        assertThatThrownBy(() -> facts.reference("R-2")).hasMessage("saturation.txt lacks the reference state of R-2");
        assertThatThrownBy(() -> facts.curves("R-1", Side.DEW)).hasMessage("saturation.txt lacks R-1 DEW temperature");
    }

    @Test
    void curvesAreReadPieceByPiece() {
        CurveFacts facts = CurveFacts.parse(FactLines.of(
                "curve R-1 DEW temperature 0 2", "piece 1 1", "piece 3 1", "curve R-1 DEW ln-pressure 0 1", "piece 7"));
        SaturationCurves curves = facts.curves("R-1", Side.DEW);

        // The first piece runs from 0 to 2 over 0 to 1, the second from 2 to 4 over 1 to 2.
        assertThat(curves.temperature().at(0)).isCloseTo(0, within(1e-12));
        assertThat(curves.temperature().at(0.5)).isCloseTo(1, within(1e-12));
        assertThat(curves.temperature().at(1.75)).isCloseTo(3.5, within(1e-12));
        assertThat(curves.temperature().pieces()).isEqualTo(2);
        assertThat(curves.lnPressure().at(0.3)).isEqualTo(7);
        assertThat(curves.lnPressure().high()).isEqualTo(1);
    }
}
