package org.loomwright.core.electrical.tracing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Element;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The best way found to a node so far. Ways are compared by what a person would call the way of the feed: as few loads as can be, from the
 * battery sooner than from the generator, then as few contacts, fuses and steps as can be.
 *
 * @param node the node
 * @param start how late the place where the way began is chosen, 0 first
 * @param before the way to the node before, or null where it begins
 * @param last the last step, or null where it begins
 * @param loads loads on it
 * @param contacts contacts on it
 * @param fuses fuses on it
 * @param conditions steps that are more than copper and earth screws
 * @param steps steps
 */
record Reached(
        String node,
        int start,
        @Nullable Reached before,
        @Nullable Step last,
        int loads,
        int contacts,
        int fuses,
        int conditions,
        int steps) {

    static final Comparator<Reached> BEST_FIRST =
            Comparator.comparingInt(Reached::loads)
                    .thenComparingInt(Reached::start)
                    .thenComparingInt(Reached::contacts)
                    .thenComparingInt(Reached::fuses)
                    .thenComparingInt(Reached::conditions)
                    .thenComparingInt(Reached::steps)
                    .thenComparing(Reached::node);

    static Reached start(String node, int start) {
        return new Reached(node, start, null, null, 0, 0, 0, 0, 0);
    }

    Reached then(Step step) {
        return new Reached(
                step.to(),
                start,
                this,
                step,
                loads + (step.isLoad() ? 1 : 0),
                contacts + (step.isContact() ? 1 : 0),
                fuses + (step.isThrough(Element.FUSE) ? 1 : 0),
                conditions + (step.isConditional() ? 1 : 0),
                steps + 1);
    }

    /** The steps from the start to here. */
    List<Step> way() {
        List<Step> way = new ArrayList<>();
        for (Reached at = this; at != null && at.last != null; at = at.before) {
            way.add(at.last);
        }
        return way.reversed();
    }

    /** What the way leads through. */
    List<Passed> path() {
        List<Passed> path = new ArrayList<>();
        for (Step step : way()) {
            if (step.passed() != null) {
                path.add(step.passed());
            }
        }
        return path;
    }
}
