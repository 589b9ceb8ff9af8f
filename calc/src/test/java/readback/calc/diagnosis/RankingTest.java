package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class RankingTest {

    private record Figure(String name, double value) {}

    private static List<String> ranked(Figure... figures) {
        return List.of(figures).stream()
                .sorted(Ranking.by(Figure::value))
                .map(Figure::name)
                .toList();
    }

    @Test
    void the_largest_comes_first() {
        assertThat(ranked(new Figure("low", -0.5), new Figure("high", 0.2), new Figure("middle", 0.1)))
                .containsExactly("high", "middle", "low");
    }

    /** 0.1 + 0.2 is 5e-17 more than 0.3 in binary. */
    @Test
    void what_differs_by_rounding_alone_keeps_its_order() {
        assertThat(ranked(new Figure("first", 0.3), new Figure("second", 0.1 + 0.2)))
                .containsExactly("first", "second");
        assertThat(ranked(new Figure("first", 0.3), new Figure("second", 0.300001)))
                .containsExactly("second", "first");
    }
}
