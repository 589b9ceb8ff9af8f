package readback.calc.diagnosis;

import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/** Orders by a figure, the largest first. What differs by the rounding of sums alone keeps the order that it had. */
final class Ranking {

    /** Figures are probabilities and natural units of information: far finer than anything that is decided by them. */
    private static final double STEPS = 1e9;

    private Ranking() {}

    static <T> Comparator<T> by(ToDoubleFunction<T> figure) {
        return Comparator.comparingDouble(each -> -Math.rint(figure.applyAsDouble(each) * STEPS));
    }
}
