package ribmark.weighup;

import java.util.Arrays;

/** A handful of equations solved by elimination, the largest pivot first. */
final class SmallMatrix {

    private SmallMatrix() {}

    static double[][] inverse(double[][] matrix) {
        int size = matrix.length;
        double[][] work = new double[size][2 * size];
        for (int row = 0; row < size; row++) {
            System.arraycopy(matrix[row], 0, work[row], 0, size);
            work[row][size + row] = 1;
        }
        for (int column = 0; column < size; column++) {
            swap(work, column, pivot(work, column));
            eliminate(work, column);
        }
        double[][] inverse = new double[size][];
        for (int row = 0; row < size; row++) {
            inverse[row] = Arrays.copyOfRange(work[row], size, 2 * size);
        }
        return inverse;
    }

    private static int pivot(double[][] work, int column) {
        int best = column;
        for (int row = column + 1; row < work.length; row++) {
            if (Math.abs(work[row][column]) > Math.abs(work[best][column])) {
                best = row;
            }
        }
        return best;
    }

    private static void swap(double[][] work, int one, int other) {
        double[] kept = work[one];
        work[one] = work[other];
        work[other] = kept;
    }

    private static void eliminate(double[][] work, int column) {
        double pivot = work[column][column];
        for (int i = 0; i < work[column].length; i++) {
            work[column][i] /= pivot;
        }
        for (int row = 0; row < work.length; row++) {
            double factor = work[row][column];
            for (int i = 0; row != column && i < work[row].length; i++) {
                work[row][i] -= factor * work[column][i];
            }
        }
    }
}
