/**
 * What do tests need again and again? Looms drawn by hand ({@link org.loomwright.testing.LoomSketch}, {@link
 * org.loomwright.testing.TestLooms}), looms of any size from a seed ({@link org.loomwright.testing.RandomLooms}) and the real
 * catalogue. Everything here is invented; no vehicle has such a loom.
 */
@NullMarked
package org.loomwright.testing;

import org.jspecify.annotations.NullMarked;
