package org.loomwright.core.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A run of legs that is drawn in one line.
 *
 * @param legs from the one nearest the datum outward
 * @param hungOn leg at whose far end it begins
 * @param lengthMm real length
 * @param beyondMm real length of it and everything that hangs on it
 */
record Spine(List<Integer> legs, int hungOn, double lengthMm, double beyondMm) {

    private static final Comparator<Spine> LARGEST_FIRST =
            Comparator.comparingDouble(Spine::beyondMm)
                    .reversed()
                    .thenComparing(spine -> spine.legs().getFirst());

    Spine {
        legs = List.copyOf(legs);
    }

    int first() {
        return legs.getFirst();
    }

    /**
     * Divides the tree into spines.
     *
     * <p>Source: own derivation after the heavy-path decomposition of D. Sleator and R. Tarjan, "A data structure for dynamic
     * trees", 1983, section 4, with length times thickness for the weight.
     *
     * @return the trunk first, each spine after the one that it hangs on, large ones before small ones
     */
    static List<Spine> of(LayoutTree tree) {
        List<Spine> waiting = new ArrayList<>();
        heads(tree, LayoutTree.DATUM).forEach(leg -> waiting.add(along(tree, leg)));
        List<Spine> order = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Spine next =
                    order.isEmpty()
                            ? waiting.getFirst()
                            : waiting.stream().min(LARGEST_FIRST).orElseThrow();
            waiting.remove(next);
            order.add(next);
            for (int leg : next.legs()) {
                List<Integer> heads = new ArrayList<>(heads(tree, leg));
                heads.removeAll(next.legs());
                heads.forEach(head -> waiting.add(along(tree, head)));
            }
        }
        return order;
    }

    /** The legs that leave the far end of a leg, the one that carries on most first. */
    private static List<Integer> heads(LayoutTree tree, int leg) {
        return tree.children(leg).stream()
                .sorted(
                        Comparator.comparingDouble((Integer child) -> tree.onward(child))
                                .reversed()
                                .thenComparing(child -> child))
                .toList();
    }

    private static Spine along(LayoutTree tree, int head) {
        List<Integer> legs = new ArrayList<>();
        double length = 0;
        List<Integer> next = List.of(head);
        while (!next.isEmpty()) {
            legs.add(next.getFirst());
            length += tree.lengthMm(next.getFirst());
            next = heads(tree, next.getFirst());
        }
        return new Spine(legs, tree.parent(head), length, tree.beyondMm(head));
    }
}
