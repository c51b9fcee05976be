package org.loomwright.core.geometry;

/**
 * The one tolerance policy of the geometry.
 *
 * <p>Lengths are compared with an absolute slack of one millionth of a millimetre, a nanometre. Two reasons for that
 * size. It is a thousand times finer than the whole micrometre in which lengths are stored, so it can never be seen in
 * a stored value. And it is about a million times coarser than the rounding error of {@code double} arithmetic at the
 * size of a loom (a metre has an ulp of 1e-13 mm), so a right answer is never rejected for rounding. Constructions
 * aim at no slack at all; the tolerance is for those who check them.
 */
public final class Tolerance {

    /** Overlaps, escapes and gaps up to this many millimetres count as none. */
    public static final double LENGTH_MM = 1e-6;

    private Tolerance() {}
}
