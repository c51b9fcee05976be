package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.kit.WirePart;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

import java.util.List;

/** A wire to add, while its size is being found. */
final class Job {

    final WirePart part;
    final Place from;
    final Place to;
    final List<Segment> route;
    final Length length;

    /** What flows through it. */
    final Current load;

    /** What it has to bear: its load, its fuse, or what the recipe says. */
    Current needed = Current.ZERO;

    /** What its fuse carries, where it has one. */
    @Nullable Current fuse;

    @Nullable ConductorSize size;

    Job(WirePart part, Place from, Place to, List<Segment> route, Length length, Current load) {
        this.part = part;
        this.from = from;
        this.to = to;
        this.route = route;
        this.length = length;
        this.load = load;
    }
}
