package org.loomwright.solver;

import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.network.SymmetricMatrix;

/**
 * EJML's sparse Cholesky decomposition, in the order in which the matrix comes. Substitution is done here: going forward it leaves out
 * what is still zero, which is nearly everything where a right side has one entry. Thread-safe: every factoring has its own work space.
 */
public final class SparseCholesky implements LinearSolver {

    @Override
    public Factored factor(SymmetricMatrix matrix) {
        CholeskyUpLooking_DSCC cholesky = new CholeskyUpLooking_DSCC();
        if (!cholesky.decompose(ejml(matrix))) {
            throw new IllegalArgumentException("the matrix is not positive definite");
        }
        DMatrixSparseCSC lower = cholesky.getL();
        return right -> {
            double[] x = right.clone();
            forward(lower, x);
            backward(lower, x);
            return x;
        };
    }

    /** The diagonal comes first in every column. */
    private static void forward(DMatrixSparseCSC lower, double[] x) {
        for (int column = 0; column < x.length; column++) {
            if (x[column] != 0) {
                int start = lower.col_idx[column];
                double solved = x[column] / lower.nz_values[start];
                x[column] = solved;
                for (int at = start + 1; at < lower.col_idx[column + 1]; at++) {
                    x[lower.nz_rows[at]] -= lower.nz_values[at] * solved;
                }
            }
        }
    }

    private static void backward(DMatrixSparseCSC lower, double[] x) {
        for (int column = x.length - 1; column >= 0; column--) {
            int start = lower.col_idx[column];
            double left = x[column];
            for (int at = start + 1; at < lower.col_idx[column + 1]; at++) {
                left -= lower.nz_values[at] * x[lower.nz_rows[at]];
            }
            x[column] = left / lower.nz_values[start];
        }
    }

    private static DMatrixSparseCSC ejml(SymmetricMatrix matrix) {
        DMatrixSparseCSC ejml =
                new DMatrixSparseCSC(matrix.size(), matrix.size(), matrix.values().length);
        ejml.col_idx = matrix.columnStarts().clone();
        ejml.nz_rows = matrix.rows().clone();
        ejml.nz_values = matrix.values().clone();
        ejml.nz_length = matrix.values().length;
        ejml.indicesSorted = true;
        return ejml;
    }
}
