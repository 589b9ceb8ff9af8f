package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PairedTestTest {

    /**
     * Ratings of a prime minister in two surveys of the same 1,600 people (A. Agresti, Categorical Data Analysis, 1990,
     * p. 350): 86 came to approve, 150 no longer did. The exact probability stands in M. P. Fay, "Exact McNemar's test
     * and matching confidence intervals", the guide of the R package exact2x2.
     */
    @Test
    void the_published_example_comes_out() {
        assertThat(new PairedTest(86, 150).probability()).isCloseTo(3.716e-5, within(1e-8));
        assertThat(new PairedTest(150, 86).probability()).isCloseTo(3.716e-5, within(1e-8));
    }

    /** The tail of the binomial distribution by hand: (1 + 6) of 64 on both sides, 1 of 64 on both sides. */
    @Test
    void few_pairs_are_counted_exactly() {
        assertThat(new PairedTest(1, 5).probability()).isCloseTo(14 / 64.0, within(1e-12));
        assertThat(new PairedTest(0, 6).probability()).isCloseTo(2 / 64.0, within(1e-12));
    }

    @Test
    void nothing_is_told_by_pairs_that_are_as_many_or_alike() {
        assertThat(new PairedTest(3, 3).probability()).isEqualTo(1);
        assertThat(new PairedTest(0, 0).probability()).isEqualTo(1);
    }

    @Test
    void only_what_came_out_otherwise_counts() {
        boolean[] first = {true, true, true, false, false};
        boolean[] second = {true, false, false, true, false};

        assertThat(PairedTest.of(first, second)).isEqualTo(new PairedTest(2, 1));
    }
}
