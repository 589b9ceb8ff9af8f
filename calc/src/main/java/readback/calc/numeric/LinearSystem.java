package readback.calc.numeric;

/** Small dense systems of linear equations. */
public final class LinearSystem {

    private LinearSystem() {}

    /**
     * Replaces the right side by the solution: Gaussian elimination with partial pivoting. The matrix is overwritten.
     *
     * @throws ArithmeticException if the matrix is singular
     */
    public static void solve(double[][] matrix, double[] right) {
        int size = right.length;
        for (int column = 0; column < size; column++) {
            int pivot = column;
            for (int row = column + 1; row < size; row++) {
                if (Math.abs(matrix[row][column]) > Math.abs(matrix[pivot][column])) {
                    pivot = row;
                }
            }
            double[] pivotRow = matrix[pivot];
            matrix[pivot] = matrix[column];
            matrix[column] = pivotRow;
            double pivotRight = right[pivot];
            right[pivot] = right[column];
            right[column] = pivotRight;
            if (!(Math.abs(pivotRow[column]) > 0)) {
                throw new ArithmeticException("singular matrix");
            }
            for (int row = column + 1; row < size; row++) {
                double factor = matrix[row][column] / pivotRow[column];
                if (factor != 0) {
                    for (int k = column; k < size; k++) {
                        matrix[row][k] -= factor * pivotRow[k];
                    }
                    right[row] -= factor * pivotRight;
                }
            }
        }
        for (int row = size - 1; row >= 0; row--) {
            double sum = right[row];
            for (int k = row + 1; k < size; k++) {
                sum -= matrix[row][k] * right[k];
            }
            right[row] = sum / matrix[row][row];
        }
    }
}
