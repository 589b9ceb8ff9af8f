package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.fact.FactTable;
import readback.calc.measurement.ChargeMethod;

/** The file of simulated units is what the program makes of them today. */
class SimulatedUnitsTest {

    /** Tenths of a kelvin; another processor rounds differently. */
    private static final int ROUNDING = 1;

    private static final int FIRST_DEVIATION = 4;

    private static final List<List<String>> FILE = FactTable.lines(Population.class, "simulated-units.txt");

    /** Three designs of 48, each with every trouble: their lines are made anew. */
    @ParameterizedTest
    @EnumSource(ChargeMethod.class)
    void a_sample_of_the_units_is_made_as_it_stands_in_the_file(ChargeMethod method) {
        SimulatedUnits units = new SimulatedUnits(method);
        for (Population.Trouble trouble : Population.of(method).troubles()) {
            List<List<String>> stored = FILE.stream()
                    .filter(line -> line.get(0).equals("unit")
                            && line.get(1).equals(method.name())
                            && line.get(2).equals(trouble.name()))
                    .toList();
            for (int number : new int[] {0, 1, 2}) {
                List<String> made = List.of(
                        units.line(trouble.name(), number, Population.of(method).sound())
                                .split(" "));
                List<String> line = stored.get(number);
                assertThat(made.subList(0, FIRST_DEVIATION)).isEqualTo(line.subList(0, FIRST_DEVIATION));
                for (int i = FIRST_DEVIATION; i < line.size() - 1; i++) {
                    assertThat(Math.abs(Integer.parseInt(made.get(i)) - Integer.parseInt(line.get(i))))
                            .as("%s %d, column %d", trouble.name(), number, i)
                            .isLessThanOrEqualTo(ROUNDING);
                }
                assertThat(made.get(line.size() - 1)).isEqualTo(line.get(line.size() - 1));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(ChargeMethod.class)
    void every_trouble_has_as_many_units(ChargeMethod method) {
        assertThat(Population.of(method).troubles())
                .isNotEmpty()
                .allSatisfy(trouble -> assertThat(trouble.units().size())
                        .as(trouble.name())
                        .isEqualTo(
                                Population.of(method).troubles().get(0).units().size())
                        .isGreaterThan(200));
    }

    @ParameterizedTest
    @EnumSource(ChargeMethod.class)
    void sound_units_deviate_from_themselves_by_little_on_average(ChargeMethod method) {
        UnitColumns sound = Population.of(method).troubles().get(0).units();
        for (Symptom symptom : Symptom.values()) {
            double sum = 0;
            for (double deviation : sound.deviations(Observed.index(symptom))) {
                sum += deviation;
            }
            assertThat(Math.abs(sum / sound.size())).as("%s", symptom).isLessThan(1);
        }
    }

    @Test
    void the_order_of_the_findings_stands_in_the_file() {
        assertThat(FILE.get(0).subList(1, FILE.get(0).size()))
                .isEqualTo(Arrays.stream(Finding.values()).map(Enum::name).toList());
    }
}
