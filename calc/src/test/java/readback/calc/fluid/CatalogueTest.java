package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
            assertThat(sum).as(refrigerant.designation()).isCloseTo(1, org.assertj.core.api.Assertions.within(1e-12));
        }
    }
}
