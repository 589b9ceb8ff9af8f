package readback.calc.applicability;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.Temperature;

/**
 * The decision table against the rules of its sources, written here a second time as sentences: California Energy
 * Commission RA1.2 (winter set-up), RA3.2.2 (cooling check), RA3.2.3 (weigh-in); the rest common practice, no source.
 */
class ApplicabilityTest {

    private static final List<Boolean> BOTH = List.of(false, true);
    private static final double[] OUTDOORS = {-20, 36.9, 37, 37.1, 54.9, 55, 70.9, 71, 115};

    static Stream<Circumstances> everyCell() {
        List<Circumstances> cells = new ArrayList<>();
        for (boolean maker : BOTH) {
            for (boolean opened : BOTH) {
                for (SystemKind kind : SystemKind.values()) {
                    for (boolean variable : BOTH) {
                        for (ChargeMethod method : ChargeMethod.values()) {
                            for (double outdoor : OUTDOORS) {
                                for (boolean restrictor : BOTH) {
                                    cells.add(cell(maker, opened, kind, variable, method, outdoor, restrictor));
                                }
                            }
                        }
                    }
                }
            }
        }
        return cells.stream();
    }

    private static Circumstances cell(
            boolean maker,
            boolean opened,
            SystemKind kind,
            boolean variable,
            ChargeMethod method,
            double outdoor,
            boolean restrictor) {
        return new Circumstances(
                Optional.of(maker),
                Optional.of(opened),
                Optional.of(kind),
                Optional.of(variable),
                Optional.of(method),
                Optional.of(Temperature.fahrenheit(outdoor)),
                Optional.of(restrictor));
    }

    @ParameterizedTest
    @MethodSource("everyCell")
    void every_cell_is_what_its_sources_say(Circumstances cell) {
        ChargeTest found = Applicability.of(cell).orElseThrow();

        boolean maker = cell.makersProcedure().orElseThrow();
        boolean byWeight = cell.opened().orElseThrow()
                || cell.kind().orElseThrow() == SystemKind.DUCTLESS
                || cell.variableSpeed().orElseThrow();
        double outdoor = cell.outdoor().orElseThrow().fahrenheit();
        boolean ducted = cell.kind().orElseThrow() == SystemKind.SPLIT_AIR_CONDITIONER
                || cell.kind().orElseThrow() == SystemKind.SPLIT_HEAT_PUMP;
        boolean valve = cell.method().orElseThrow() == ChargeMethod.SUBCOOLING;
        // 1e-9: what conversion to kelvins may leave
        boolean warm = outdoor > 55 - 1e-9;

        assertThat(found == ChargeTest.MAKERS_PROCEDURE).isEqualTo(maker);
        assertThat(found == ChargeTest.WEIGH_IN).isEqualTo(!maker && byWeight);
        assertThat(found == ChargeTest.COOLING_CHECK).isEqualTo(!maker && !byWeight && warm);
        assertThat(found == ChargeTest.WINTER_SET_UP)
                .isEqualTo(!maker
                        && !byWeight
                        && !warm
                        && outdoor > 37 + 1e-9
                        && ducted
                        && valve
                        && cell.restrictorAllowed().orElseThrow());
        if (found == ChargeTest.HEATING_CHECK) {
            assertThat(cell.kind()).contains(SystemKind.SPLIT_HEAT_PUMP);
            assertThat(warm).isFalse();
        }
        if (found == ChargeTest.NONE_TODAY) {
            assertThat(cell.kind().orElseThrow()).isNotEqualTo(SystemKind.SPLIT_HEAT_PUMP);
        }
    }

    @ParameterizedTest(name = "{0} at {1} °F by {2}, restrictor {3}: {4}")
    @CsvSource({
        "SPLIT_AIR_CONDITIONER, 75, TOTAL_SUPERHEAT, false, COOLING_CHECK",
        "SPLIT_AIR_CONDITIONER, 45, TOTAL_SUPERHEAT, true, NONE_TODAY",
        "SPLIT_AIR_CONDITIONER, 45, SUBCOOLING, true, WINTER_SET_UP",
        "SPLIT_AIR_CONDITIONER, 45, SUBCOOLING, false, NONE_TODAY",
        "SPLIT_AIR_CONDITIONER, 37, SUBCOOLING, true, NONE_TODAY",
        "SPLIT_HEAT_PUMP, 30, SUBCOOLING, true, HEATING_CHECK",
        "SPLIT_HEAT_PUMP, 45, TOTAL_SUPERHEAT, true, HEATING_CHECK",
        "PACKAGED, 80, SUBCOOLING, false, COOLING_CHECK",
        "PACKAGED, 45, SUBCOOLING, true, NONE_TODAY",
        "DUCTLESS, 80, SUBCOOLING, false, WEIGH_IN"
    })
    void what_a_technician_would_say(
            SystemKind kind, double outdoor, ChargeMethod method, boolean restrictor, ChargeTest expected) {
        assertThat(Applicability.of(cell(false, false, kind, false, method, outdoor, restrictor)))
                .contains(expected);
    }

    @Test
    void what_changes_nothing_is_not_asked() {
        Circumstances nothing = new Circumstances(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(Applicability.of(nothing)).isEmpty();
        assertThat(Stream.of(Applicability.Fact.values()).allMatch(fact -> Applicability.dependsOn(fact, nothing)))
                .isTrue();

        Circumstances ductless = new Circumstances(
                Optional.of(false),
                Optional.empty(),
                Optional.of(SystemKind.DUCTLESS),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(Applicability.of(ductless)).contains(ChargeTest.WEIGH_IN);
        assertThat(Stream.of(Applicability.Fact.values()).noneMatch(fact -> Applicability.dependsOn(fact, ductless)))
                .isTrue();

        Circumstances warm = new Circumstances(
                Optional.of(false),
                Optional.of(false),
                Optional.of(SystemKind.SPLIT_HEAT_PUMP),
                Optional.of(false),
                Optional.empty(),
                Optional.of(Temperature.fahrenheit(80)),
                Optional.empty());
        assertThat(Applicability.of(warm)).contains(ChargeTest.COOLING_CHECK);
        assertThat(Applicability.dependsOn(Applicability.Fact.RESTRICTOR_ALLOWED, warm))
                .isFalse();
        assertThat(Applicability.dependsOn(Applicability.Fact.METHOD, warm)).isFalse();
    }

    @Test
    void a_fact_counts_only_in_a_way_in_which_it_can_still_turn_out() {
        Circumstances piston = new Circumstances(
                Optional.of(false),
                Optional.of(false),
                Optional.of(SystemKind.SPLIT_AIR_CONDITIONER),
                Optional.of(false),
                Optional.of(ChargeMethod.TOTAL_SUPERHEAT),
                Optional.empty(),
                Optional.empty());
        assertThat(Applicability.dependsOn(Applicability.Fact.OUTDOOR, piston)).isTrue();
        assertThat(Applicability.dependsOn(Applicability.Fact.RESTRICTOR_ALLOWED, piston))
                .isFalse();
    }
}
