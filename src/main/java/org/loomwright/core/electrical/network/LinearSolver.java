package org.loomwright.core.electrical.network;

/** Solves sparse symmetric positive definite systems. An implementation is thread-safe; what {@link #factor} returns is not. */
public interface LinearSolver {

    /**
     * @param matrix symmetric positive definite, in an order that suits elimination
     * @return the matrix ready for any number of right sides
     * @throws IllegalArgumentException if it is not positive definite
     */
    Factored factor(SymmetricMatrix matrix);

    /** A matrix that was taken apart once. */
    interface Factored {

        /**
         * @param right the right side, left as it is
         * @return x with matrix times x = right
         */
        double[] solve(double[] right);
    }
}
