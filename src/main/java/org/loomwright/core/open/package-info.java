/**
 * What has nobody said yet that is needed for a price or for a build? Start with {@link org.loomwright.core.open.OpenPoints}: a list of
 * open points in plain words, a score, and the question to ask next.
 *
 * <p>A <em>question</em> is asked of a thing and carries a weight; a question that the loom answers counts as said, any other is an
 * <em>open point</em>. What a service usually needs is a table ({@link org.loomwright.core.open.Expectations}), the rest are rules.
 * An open point is never a verdict on what is there, and a full score is no clearance.
 */
@NullMarked
package org.loomwright.core.open;

import org.jspecify.annotations.NullMarked;
