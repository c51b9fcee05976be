package org.loomwright.core.analysis;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.bundle.WireCounts;
import org.loomwright.core.quantity.Length;

/**
 * What the amendments do to one segment of the amended loom.
 *
 * @param before the bundle of the recorded segment that this one is, or is a part of; null for a new segment
 * @param after its bundle now
 */
public record SegmentChange(@Nullable SegmentBundle before, SegmentBundle after) {

    /** @return id of the segment in the amended loom */
    public String segment() {
        return after.segment().id();
    }

    /** @return wires that run through it now and did not before */
    public WireCounts added() {
        return after.counts().without(countsBefore());
    }

    /** @return wires that ran through it and do not any more */
    public WireCounts removed() {
        return countsBefore().without(after.counts());
    }

    /** @return its wires before, none for a new segment */
    public WireCounts countsBefore() {
        return before == null ? WireCounts.NONE : before.counts();
    }

    /** @return how much thicker it is when covered; negative when thinner */
    public Length growth() {
        return before == null ? after.covered() : after.covered().minus(before.covered());
    }

    /** @return whether other wires run through it than before, or it is new */
    public boolean isChanged() {
        return before == null || !before.counts().equals(after.counts());
    }
}
