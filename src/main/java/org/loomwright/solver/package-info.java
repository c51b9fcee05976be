/**
 * Who does the linear algebra? EJML behind {@link org.loomwright.core.electrical.network.LinearSolver}. May depend on core and EJML.
 */
@NullMarked
package org.loomwright.solver;

import org.jspecify.annotations.NullMarked;
