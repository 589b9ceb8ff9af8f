package readback.calc.fluid;

import java.util.function.DoubleUnaryOperator;

/**
 * A function of one variable as Chebyshev series on equal pieces of its range. Neighbouring pieces share their end
 * value, because each interpolates at the Chebyshev points of the second kind, which include the ends. Immutable;
 * evaluation allocates nothing.
 */
final class SaturationCurve {

    private final double low;
    private final double high;
    private final int pieces;
    private final int terms;
    private final double piecesPerUnit;
    private final double[] coefficients;

    /** @param coefficients piece by piece, lowest order first */
    SaturationCurve(double low, double high, int pieces, double[] coefficients) {
        this.low = low;
        this.high = high;
        this.pieces = pieces;
        this.terms = coefficients.length / pieces;
        this.piecesPerUnit = pieces / (high - low);
        this.coefficients = coefficients.clone();
    }

    /** The interpolant of a function. */
    static SaturationCurve fit(DoubleUnaryOperator function, double low, double high, int pieces, int degree) {
        int terms = degree + 1;
        double[] coefficients = new double[pieces * terms];
        double width = (high - low) / pieces;
        for (int piece = 0; piece < pieces; piece++) {
            double[] values = new double[terms];
            for (int k = 0; k < terms; k++) {
                double u = Math.cos(Math.PI * k / degree);
                values[k] = function.applyAsDouble(low + width * (piece + 0.5 * (u + 1)));
            }
            for (int j = 0; j < terms; j++) {
                double sum = 0;
                for (int k = 0; k < terms; k++) {
                    double share = k == 0 || k == degree ? 0.5 : 1;
                    sum += share * values[k] * Math.cos(Math.PI * j * k / degree);
                }
                double scale = j == 0 || j == degree ? 1.0 / degree : 2.0 / degree;
                coefficients[piece * terms + j] = scale * sum;
            }
        }
        return new SaturationCurve(low, high, pieces, coefficients);
    }

    /** The value at a point inside the range, by Clenshaw's recurrence; outside, the end piece is continued. */
    double at(double x) {
        double position = (x - low) * piecesPerUnit;
        int piece = Math.max(0, Math.min(pieces - 1, (int) position));
        double twice = 4 * (position - piece) - 2;
        int first = piece * terms;
        double next = 0;
        double afterNext = 0;
        for (int j = first + terms - 1; j > first; j--) {
            double here = coefficients[j] + twice * next - afterNext;
            afterNext = next;
            next = here;
        }
        return coefficients[first] + 0.5 * twice * next - afterNext;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    int pieces() {
        return pieces;
    }

    /** A copy of the coefficients, piece by piece. */
    double[] coefficients() {
        return coefficients.clone();
    }
}
