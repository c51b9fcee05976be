package org.loomwright.solver;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.network.SymmetricMatrix;

/** EJML's sparse Cholesky decomposition, in the order in which the matrix comes. Thread-safe: every factoring has its own work space. */
public final class SparseCholesky implements LinearSolver {

    @Override
    public Factored factor(SymmetricMatrix matrix) {
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> cholesky =
                LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        if (!cholesky.setA(ejml(matrix))) {
            throw new IllegalArgumentException("the matrix is not positive definite");
        }
        return right -> {
            DMatrixRMaj x = new DMatrixRMaj(matrix.size(), 1);
            cholesky.solve(DMatrixRMaj.wrap(matrix.size(), 1, right.clone()), x);
            return x.data;
        };
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
