package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.diagnosis.Deviations.deviation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The density against its formula, unit by unit. Student's density of four degrees of freedom is 3/8 (1 + t²/4)^-5/2
 * over the scale: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1, with both gamma functions worked
 * out.
 */
class LikenessTest {

    private static final List<Evidence> EVIDENCE = List.of(
            deviation(Symptom.EVAPORATING_TEMPERATURE, -6),
            deviation(Symptom.SUPERHEAT, 13),
            deviation(Symptom.SUBCOOLING, -90));

    private static final List<UnitColumns.Row> ROWS = List.of(row(0), row(-4), row(3.5), row(12), row(-0.2), row(60));

    private final Observed observed = Observed.independent(EVIDENCE);
    private final Likeness likeness = new Likeness(observed, ROWS.size());

    private static UnitColumns.Row row(double kelvins) {
        List<Double> deviations = new ArrayList<>();
        for (int i = 0; i < Symptom.values().length; i++) {
            deviations.add(kelvins * (i + 1) / 3);
        }
        return new UnitColumns.Row(1, deviations, 0);
    }

    /** Student's density but for its factor, with the spread of real units that the class states. */
    private double student(Evidence evidence, UnitColumns.Row unit) {
        int column = Observed.index(evidence.symptom());
        double moved = unit.deviations().get(column);
        double variance = Likeness.variance(observed, column) + 0.3 * 0.3 * moved * moved;
        double left = evidence.deviation().kelvins() - moved;
        return Math.pow(1 + left * left / (4 * variance), -2.5) / Math.sqrt(variance);
    }

    @Test
    void one_piece_of_evidence_has_students_density() {
        for (int piece = 0; piece < EVIDENCE.size(); piece++) {
            double first = student(EVIDENCE.get(piece), ROWS.get(0));
            double firstFound = likeness.alone(piece, UnitColumns.of(ROWS.subList(0, 1)));
            for (UnitColumns.Row row : ROWS) {
                double byFormula = student(EVIDENCE.get(piece), row) / first;

                assertThat(likeness.alone(piece, UnitColumns.of(List.of(row))) / firstFound)
                        .as("piece %s, %s", piece, row)
                        .isCloseTo(byFormula, within(1e-12 * byFormula));
            }
        }
    }

    @Test
    void the_density_of_several_units_alone_is_their_mean() {
        double sum = 0;
        for (UnitColumns.Row row : ROWS) {
            sum += likeness.alone(1, UnitColumns.of(List.of(row)));
        }

        assertThat(likeness.alone(1, UnitColumns.of(ROWS))).isCloseTo(sum / ROWS.size(), within(1e-15));
    }

    /** Each piece has tails of its own, so that one wild value does not outvote the others. */
    @Test
    void independent_pieces_have_the_product_of_their_densities() {
        double[] joint = likeness.joint(UnitColumns.of(ROWS));
        double first = together(ROWS.get(0));
        for (int i = 0; i < joint.length; i++) {
            double byFormula = together(ROWS.get(i)) / first;

            assertThat(joint[i] / joint[0]).as("unit %s", i).isCloseTo(byFormula, within(1e-12 * byFormula));
        }
    }

    private double together(UnitColumns.Row unit) {
        double product = 1;
        for (Evidence evidence : EVIDENCE) {
            product *= student(evidence, unit);
        }
        return product;
    }

    @Test
    void what_was_worked_out_before_leaves_no_trace() {
        double[] before = likeness.joint(UnitColumns.of(ROWS));
        List<UnitColumns.Row> reversed = new ArrayList<>(ROWS);
        Collections.reverse(reversed);

        likeness.alone(2, UnitColumns.of(ROWS.subList(0, 2)));
        likeness.joint(UnitColumns.of(reversed.subList(0, 3)));

        assertThat(likeness.joint(UnitColumns.of(ROWS))).containsExactly(before);
    }
}
