package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

class CatalogueTest {

    /** Read anew, so that reading is tested too. */
    private final Catalogue catalogue = Catalogue.load();

    @ParameterizedTest
    @CsvSource({
        "R-410A, R-410A",
        "R410A, R-410A",
        "r-410a, R-410A",
        "410a, R-410A",
        "four ten a, R-410A",
        "r four ten a, R-410A",
        "Four Ten, R-410A",
        "twenty two, R-22",
        "four fifty four b, R-454B",
        "R1234ze(E), R-1234ze(E)",
        "r-1234ze, R-1234ze(E)",
        "propane, R-290",
        "one thirty four a, R-134a",
        "four oh seven c, R-407C",
    })
    void findsARefrigerantByWhatItIsCalled(String asked, String designation) {
        assertThat(catalogue.find(asked))
                .isInstanceOfSatisfying(
                        Lookup.Found.class,
                        found -> assertThat(found.refrigerant().designation()).isEqualTo(designation));
    }

    @Test
    void findsEveryRefrigerantByItsDesignationAndAllItsSpokenNames() {
        for (Refrigerant refrigerant : catalogue.all()) {
            assertThat(catalogue.find(refrigerant.designation())).isEqualTo(new Lookup.Found(refrigerant));
            assertThat(refrigerant.spokenNames()).isNotEmpty();
            for (String spoken : refrigerant.spokenNames()) {
                assertThat(catalogue.find(spoken)).as(spoken).isEqualTo(new Lookup.Found(refrigerant));
                assertThat(spoken).matches("[a-z]+( [a-z]+)*");
            }
        }
    }

    @Test
    void noSpokenNameBelongsToTwoRefrigerants() {
        Map<String, String> owners = new HashMap<>();
        for (Refrigerant refrigerant : catalogue.all()) {
            for (String spoken : refrigerant.spokenNames()) {
                assertThat(owners.put(spoken, refrigerant.designation()))
                        .as(spoken)
                        .isNull();
            }
        }
    }

    @Test
    void saysWhyARefrigerantIsNotSupported() {
        assertThat(catalogue.find("r438a"))
                .isEqualTo(new Lookup.Unsupported(
                        "R-438A", "no published mixture parameters for R-601a with R-32, R-125 and R-134a"));
    }

    @Test
    void offersTheNearestNamesForAnUnknownOne() {
        assertThat(catalogue.find("R-410B")).isInstanceOfSatisfying(Lookup.Unknown.class, unknown -> {
            assertThat(unknown.asked()).isEqualTo("R-410B");
            assertThat(unknown.nearest()).hasSize(3).startsWith("R-410A");
        });
    }

    @Test
    void holdsEveryRefrigerantOfComfortCoolingAndItsBlends() {
        assertThat(catalogue.all().stream().map(Refrigerant::designation))
                .containsAll(List.of(
                        "R-22",
                        "R-134a",
                        "R-32",
                        "R-125",
                        "R-143a",
                        "R-1234yf",
                        "R-1234ze(E)",
                        "R-290",
                        "R-410A",
                        "R-407C",
                        "R-404A",
                        "R-507A",
                        "R-454B",
                        "R-454A",
                        "R-454C",
                        "R-452B",
                        "R-448A",
                        "R-449A",
                        "R-513A",
                        "R-407A",
                        "R-407F",
                        "R-422D",
                        "R-427A",
                        "R-421A",
                        "R-417A",
                        "R-450A",
                        "R-466A"));
    }

    @Test
    void everyCompositionAddsUpToOne() {
        for (Refrigerant refrigerant : catalogue.all()) {
            double sum = refrigerant.composition().stream()
                    .mapToDouble(Ingredient::massFraction)
                    .sum();
            assertThat(sum).as(refrigerant.designation()).isCloseTo(1, within(1e-12));
        }
    }

    private Refrigerant refrigerant(String name) {
        return ((Lookup.Found) catalogue.find(name)).refrigerant();
    }

    @Test
    void theNearestNamesComeInOrderOfLikenessAndThenOfUse() {
        assertThat(nearest("407")).containsExactly("R-407C", "R-407A", "R-407F");
        assertThat(nearest("R-22x")).startsWith("R-22");
        assertThat(nearest("propan")).startsWith("R-290");
        assertThat(nearest("isobutan")).startsWith("R-600a");
        assertThat(nearest("four fifty for b")).startsWith("R-454B");
        assertThat(nearest("")).hasSize(3);
    }

    private List<String> nearest(String name) {
        return ((Lookup.Unknown) catalogue.find(name)).nearest();
    }

    @Test
    void curvesReadAnewGiveTheSameTemperatures() {
        for (Refrigerant fresh : catalogue.all()) {
            Refrigerant kept = ((Lookup.Found) Catalogue.standard().find(fresh.designation())).refrigerant();
            AbsolutePressure pressure = AbsolutePressure.psia(75);
            assertThat(fresh.dewTemperature(pressure)).isEqualTo(kept.dewTemperature(pressure));
            assertThat(fresh.bubbleTemperature(pressure)).isEqualTo(kept.bubbleTemperature(pressure));
            assertThat(fresh.saturatedLiquid(Temperature.celsius(0)).enthalpy())
                    .as(fresh.designation())
                    .isCloseTo(200_000, within(0.01));
        }
    }

    @Test
    void theLastEntriesOfTheFileCountToo() {
        assertThat(catalogue.all().get(0).designation()).isEqualTo("R-410A");
        assertThat(catalogue.all().get(catalogue.all().size() - 1).designation())
                .isEqualTo("R-152a");
        assertThat(catalogue.find("R-434A")).isInstanceOf(Lookup.Unsupported.class);
    }

    @Test
    void statesWhatTheCatalogueKnows() {
        assertThat(refrigerant("R-454B").safetyClass()).isEqualTo(SafetyClass.A2L);
        assertThat(refrigerant("R-454B").safetyClass().flammable()).isTrue();
        assertThat(refrigerant("R-410A").safetyClass().flammable()).isFalse();
        assertThat(refrigerant("R-454B").composition())
                .containsExactly(new Ingredient("R-32", 0.689), new Ingredient("R-1234yf", 0.311));
        assertThat(refrigerant("R-454B").globalWarmingPotential(AssessmentReport.AR4))
                .isEqualTo(466);
        assertThat(refrigerant("R-454B").globalWarmingPotential(AssessmentReport.AR5))
                .isEqualTo(467);
        assertThat(refrigerant("R-22").ozoneDepletionPotential()).isEqualTo(0.055);
        assertThat(refrigerant("R-410A").criticalTemperature().kelvin()).isEqualTo(344.494);
        assertThat(refrigerant("R-410A").criticalPressure().pascals()).isEqualTo(4_901_200);
        assertThat(refrigerant("R-410A")).hasToString("R-410A");
    }

    @Test
    void namesThePapersOfItsEquations() {
        assertThat(refrigerant("R-410A").papers())
                .singleElement()
                .satisfies(paper -> assertThat(paper)
                        .hasToString(
                                "Eric W. Lemmon: Pseudo-Pure Fluid Equations of State for the Refrigerant Blends R-410A,"
                                        + " R-404A, R-507A, and R-407C. Int. J. Thermophys. 24, 991-1006 (2003),"
                                        + " doi 10.1023/A:1025048800563"));
        assertThat(refrigerant("R-454B").papers())
                .extracting(Paper::doi)
                .containsExactlyInAnyOrder("10.1063/1.556002", "10.1063/5.0135368", "10.1007/s10765-022-03015-y");
    }
}
