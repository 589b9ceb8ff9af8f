package readback.assistant.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MemoryTest {

    private static final List<Grade> GRADES = List.of(Grade.values());

    private static Grade grade(char letter) {
        return switch (letter) {
            case 'A' -> Grade.AGAIN;
            case 'H' -> Grade.HARD;
            case 'G' -> Grade.GOOD;
            default -> Grade.EASY;
        };
    }

    /** Values of the reference implementation; the head of the file says how they were made. */
    @Test
    void every_step_is_that_of_the_reference() throws IOException {
        Memory memory = Memory.first(Grade.GOOD);
        int steps = 0;
        for (String line : Files.readAllLines(Path.of("src/test/resources/readback/assistant/drill/memory.csv"))) {
            if (line.startsWith("#") || line.startsWith("sequence")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            Grade grade = grade(cells[2].charAt(0));
            if (cells[1].equals("1")) {
                memory = Memory.first(grade);
            } else {
                double days = Double.parseDouble(cells[3]);
                assertThat(memory.retrievability(days)).as(line).isCloseTo(Double.parseDouble(cells[6]), within(1e-8));
                memory = memory.after(grade, days);
            }
            double stability = Double.parseDouble(cells[4]);
            assertThat(memory.stability()).as(line).isCloseTo(stability, within(1e-7 * stability + 1e-8));
            assertThat(memory.difficulty()).as(line).isCloseTo(Double.parseDouble(cells[5]), within(1e-8));
            assertThat(memory.interval()).as(line).isEqualTo(Integer.parseInt(cells[7]));
            steps++;
        }
        assertThat(steps).isEqualTo(55);
    }

    /** The day before the reviews, with one of the same day; the expected state is published with the reference. */
    @Test
    void a_second_answer_of_the_same_day_counts_less() {
        Memory memory = Memory.first(Grade.AGAIN);
        for (double days : new double[] {0, 1, 3, 8, 21}) {
            memory = memory.after(Grade.GOOD, days);
        }

        assertThat(memory.stability()).isCloseTo(53.62691, within(1e-4));
        assertThat(memory.difficulty()).isCloseTo(6.3574867, within(1e-4));
    }

    @Test
    void more_is_forgotten_with_time_and_better_answers_last_longer() {
        SplittableRandom chance = new SplittableRandom(6);
        for (int i = 0; i < 500; i++) {
            Memory any = Memory.first(GRADES.get(chance.nextInt(4)));
            for (int j = chance.nextInt(6); j > 0; j--) {
                any = any.after(GRADES.get(chance.nextInt(4)), chance.nextInt(60));
            }
            double days = chance.nextDouble(0, 200);

            assertThat(any.difficulty()).isBetween(1.0, 10.0);
            assertThat(any.stability()).isPositive();
            assertThat(any.retrievability(0)).isEqualTo(1);
            assertThat(any.retrievability(days + 1)).isLessThan(any.retrievability(days));
            assertThat(any.retrievability(any.stability())).isCloseTo(Memory.RETENTION, within(1e-12));
            assertThat(any.after(Grade.EASY, days).stability())
                    .isGreaterThanOrEqualTo(any.after(Grade.GOOD, days).stability());
            assertThat(any.after(Grade.GOOD, days).stability())
                    .isGreaterThanOrEqualTo(any.after(Grade.HARD, days).stability());
            assertThat(any.after(Grade.AGAIN, days).stability()).isLessThanOrEqualTo(any.stability());
        }
    }
}
